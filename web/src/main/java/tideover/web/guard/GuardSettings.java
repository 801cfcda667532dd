package tideover.web.guard;

import jakarta.servlet.DispatcherType;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import tideover.web.page.Doorway;
import tideover.web.page.Person;

/** The one guard that every route passes. */
@Configuration
class GuardSettings {
    /** Nothing inline, nothing from elsewhere, nothing of ours inside other pages. */
    static final String CONTENT_POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
                    + "font-src 'self'; connect-src 'self'; form-action 'self'; manifest-src 'self'; frame-ancestors 'none'; base-uri 'none'";

    @Bean
    SecurityContextRepository contexts() {
        return new HttpSessionSecurityContextRepository();
    }

    @Bean
    SecurityFilterChain guard(HttpSecurity http, AccessKey key, SecurityContextRepository contexts, Doorway doorway)
            throws Exception {
        return http.authorizeHttpRequests(requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR)
                        .permitAll()
                        .requestMatchers("/enter", "/health", "/assets/**")
                        .permitAll()
                        .anyRequest()
                        .authenticated())
                .securityContext(security -> security.securityContextRepository(contexts))
                .sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.IF_REQUIRED))
                // A key is never sent by a browser on its own, so there is nothing to forge; a stranger gets no further
                // than the door, and no session to keep a token in.
                .csrf(csrf ->
                        csrf.requireCsrfProtectionMatcher(request -> CsrfFilter.DEFAULT_CSRF_MATCHER.matches(request)
                                && !KeyFilter.hasKey(request)
                                && Person.isLetIn()))
                .requestCache(cache -> cache.disable())
                .anonymous(anonymous -> {})
                .formLogin(form -> form.disable())
                .httpBasic(basic -> basic.disable())
                .logout(logout -> logout.disable())
                .exceptionHandling(trouble ->
                        trouble.authenticationEntryPoint(doorway::refuse).accessDeniedHandler(doorway::refuse))
                // Forms of a page that tells no origin at all would look like those of a foreign one.
                .headers(headers -> headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                        .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                        .frameOptions(frame -> frame.deny())
                        .crossOriginOpenerPolicy(opener -> opener.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                        .crossOriginResourcePolicy(resource -> resource.policy(CrossOriginResourcePolicy.SAME_ORIGIN)))
                .addFilterBefore(new RequestLog(), HeaderWriterFilter.class)
                .addFilterAfter(new OriginFilter(), HeaderWriterFilter.class)
                .addFilterBefore(new KeyFilter(key), CsrfFilter.class)
                .build();
    }
}
