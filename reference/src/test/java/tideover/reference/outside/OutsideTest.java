package tideover.reference.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Our tables and formulas against what others have published; each folder's README says what is compared and why so. */
class OutsideTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("published")
    void oursAgreesWithWhatIsPublished(Published published) {
        double ours = Ours.of(published);
        assertThat(published.agreesWith(ours))
                .as("%s, ours %s", published, ours)
                .isTrue();
    }

    static Stream<Published> published() {
        return Ours.UNITS.keySet().stream().flatMap(folder -> Published.read(folder).stream());
    }
}
