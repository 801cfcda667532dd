package tideover.web;

import java.time.Clock;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.context.annotation.Bean;
import tideover.files.tables.TypicalValues;

/** The parts of the workbench that are no pages. */
@SpringBootApplication(exclude = UserDetailsServiceAutoConfiguration.class)
public class Workbench {
    @Bean
    TypicalValues typicalValues() {
        return TypicalValues.load();
    }

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
