package tideover.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Outcome;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Site;
import tideover.engine.site.ThingKind;
import tideover.files.FieldTable;
import tideover.files.SiteFileResult;
import tideover.files.SiteFiles;
import tideover.files.SiteWriter;

/** What holds for any house, not only for those we thought of. */
class GeneratedSitesTest {
    private static final int HOUSES = 400;
    private static final FieldTable FIELDS = FieldTable.load();
    private static final SiteFiles FILES = new SiteFiles(FIELDS);
    private static final SiteWriter WRITER = new SiteWriter(FIELDS);

    @Test
    void aSeedAlwaysGivesTheSameHouse() {
        assertThat(GeneratedSites.site(7)).isEqualTo(GeneratedSites.site(7)).isNotEqualTo(GeneratedSites.site(8));
    }

    @Test
    void everyKindOfThingAndEverySupplyOccurs() {
        List<Site> sites = GeneratedSites.sites(100).toList();
        Set<ThingKind> kinds = sites.stream()
                .flatMap(site -> site.planned().values().stream())
                .map(ThingKind::of)
                .collect(Collectors.toSet());
        assertThat(kinds).containsExactlyInAnyOrder(ThingKind.values());
        Set<EarthingSystem> systems = sites.stream()
                .map(site -> site.house().supply().earthingSystem())
                .filter(system -> system != null)
                .collect(Collectors.toSet());
        assertThat(systems).contains(EarthingSystem.TT, EarthingSystem.TN_S, EarthingSystem.TN_C_S);
    }

    @Test
    @Tag("slow")
    void everyHouseReadsBackAsItWasWritten() {
        GeneratedSites.sites(HOUSES).forEach(site -> {
            for (String text : List.of(WRITER.yaml(site), WRITER.canonicalJson(site))) {
                SiteFileResult result = FILES.read("generated", text.getBytes(StandardCharsets.UTF_8));
                assertThat(result).as(text).isInstanceOf(SiteFileResult.Readable.class);
                SiteFileResult.Readable readable = (SiteFileResult.Readable) result;
                assertThat(readable.site()).isEqualTo(site);
                assertThat(readable.digest()).isEqualTo(WRITER.digest(site));
            }
        });
    }

    @Test
    @Tag("slow")
    void everyHouseIsJudgedByEveryCheck() {
        for (long seed = 1; seed <= HOUSES; seed++) {
            Site site = GeneratedSites.site(seed);
            assertThatCode(() -> Houses.explain(site)).as("house %d", seed).doesNotThrowAnyException();
        }
    }

    @Test
    void theHousesAreNeitherAllGoodNorAllBad() {
        Set<Outcome> outcomes = GeneratedSites.sites(50)
                .map(Houses::assess)
                .map(Assessment::findings)
                .flatMap(List::stream)
                .map(finding -> finding.outcome())
                .collect(Collectors.toSet());
        assertThat(outcomes).contains(Outcome.MET, Outcome.NOT_MET, Outcome.OPEN, Outcome.NOT_APPLICABLE);
    }
}
