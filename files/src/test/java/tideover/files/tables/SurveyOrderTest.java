package tideover.files.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.files.FieldTable;

/** What is asked first. */
class SurveyOrderTest {

    @Test
    void everythingAskedFirstIsAFactOfTheFieldTableAndStandsThereOnce() {
        FieldTable fields = FieldTable.load();
        List<String> order = SurveyOrder.load();
        assertThat(order).hasSizeGreaterThanOrEqualTo(20).doesNotHaveDuplicates();
        assertThat(order)
                .allSatisfy(field -> assertThat(fields.find(field)).as(field).isPresent());
    }
}
