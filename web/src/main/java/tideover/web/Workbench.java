package tideover.web;

import java.time.Clock;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.context.annotation.Bean;
import tideover.engine.assessment.Assessor;
import tideover.files.FieldTable;
import tideover.files.tables.TableFiles;
import tideover.files.tables.TypicalValues;

/** The parts of the workbench that are no pages. */
@SpringBootApplication(exclude = UserDetailsServiceAutoConfiguration.class)
public class Workbench {
    @Bean
    FieldTable fields() {
        return FieldTable.load();
    }

    @Bean
    Assessor assessor() {
        return new Assessor(TableFiles.load());
    }

    @Bean
    TypicalValues typicalValues() {
        return TypicalValues.load();
    }

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
