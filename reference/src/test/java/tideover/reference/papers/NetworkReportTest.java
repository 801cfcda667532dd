package tideover.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.assessment.StatePicture;
import tideover.engine.assessment.Studies;
import tideover.engine.site.Fed;
import tideover.engine.site.Site;
import tideover.files.FieldTable;
import tideover.papers.NetworkReport;
import tideover.papers.Wording;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;

/** What flows and what faults do can be said of any house: no place left empty, no key instead of a sentence. */
class NetworkReportTest {

    private static final Wording WORDING = Wording.of(Locale.ENGLISH, FieldTable.load());

    static Stream<Site> manySites() {
        return Stream.concat(Houses.all().stream().map(Houses::read), GeneratedSites.sites(20));
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void everyHouseIsToldInSentencesOfAHundredColumns(Site site) {
        assertTold(site, NetworkReport.Length.values());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tideover.reference.laws.HostileSitesTest#houses")
    void housesThatNobodyWouldBuildAreToldToo(String name, String yaml) {
        assertTold(Houses.of(yaml), NetworkReport.Length.FULL);
    }

    private static void assertTold(Site site, NetworkReport.Length... lengths) {
        Studies studies = Houses.studies(site);
        List<Fed> places = studies.installation().all(Fed.class);
        List<StatePicture> pictures = studies.installation().states().stream()
                .map(state -> StatePicture.of(studies, state, places, 0))
                .toList();
        for (NetworkReport.Length length : lengths)
            assertTold(new NetworkReport(WORDING, studies, Houses.rules(site).layers(), length).text(pictures));
    }

    private static void assertTold(String text) {
        assertThat(text.lines().filter(line -> line.length() > 100)).isEmpty();
        assertThat(text)
                .contains("replaces no measurement")
                .doesNotContain("{")
                .doesNotContainPattern("network\\.[a-zA-Z]")
                .doesNotContain("null")
                .doesNotContain("NaN")
                .doesNotContain("Infinity")
                .doesNotContain("∞");
    }
}
