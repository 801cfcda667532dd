package tideover.web.page;

import org.springframework.context.annotation.Configuration;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Style sheets, scripts and typefaces, all out of our own jars. */
@Configuration
class Assets implements WebMvcConfigurer {
    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        // Asked for anew each time, answered with 'not changed': a new version of the program is seen at once.
        CacheControl always = CacheControl.noCache();
        registry.addResourceHandler("/assets/fonts/**")
                .addResourceLocations("classpath:/tideover/papers/fonts/")
                .setCacheControl(always);
        registry.addResourceHandler("/assets/lib/**")
                .addResourceLocations(
                        "classpath:/META-INF/resources/webjars/htmx.org/2.0.10/dist/",
                        "classpath:/META-INF/resources/webjars/sortablejs/1.15.6/")
                .setCacheControl(always);
        registry.addResourceHandler("/assets/**")
                .addResourceLocations("classpath:/tideover/web/assets/")
                .setCacheControl(always);
    }
}
