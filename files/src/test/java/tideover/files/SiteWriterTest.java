package tideover.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tideover.engine.rules.Digest;
import tideover.engine.site.FactId;
import tideover.engine.site.Site;

/** What is written reads back as the same site. */
class SiteWriterTest {
    private static final SiteWriter WRITER = new SiteWriter(TestSites.TABLE);

    @Test
    void yamlAndJsonReadBackAsTheSameSite() {
        assertReadsBack(TestSites.site(TestSites.cottage()));
    }

    @Test
    void everyExampleReadsBackAsTheSameSite() {
        for (Path example : TestSites.examples())
            if (TestSites.FILES.read(example) instanceof SiteFileResult.Readable readable)
                assertReadsBack(readable.site());
    }

    @Test
    void textsThatLookLikeSomethingElseStayTexts() {
        for (String text : new String[] {
            "12",
            "1e3",
            "null",
            "~",
            "true",
            "No",
            "-",
            "- a",
            "a: b",
            "#",
            " ü ",
            "'",
            "\"",
            "a\nb",
            "a\tb",
            "{x}",
            "[",
            "&a",
            "*a",
            "!",
            "%",
            "@",
            "`",
            ".inf",
            "0x1F",
            "2026-10-12",
            "🏠",
            "a\\b",
            "?",
            "a #b",
            "=",
            "<<"
        }) {
            Site site = TestSites.site(TestSites.cottage()).with(FactId.of("place.designation"), text);
            assertReadsBack(site);
        }
    }

    private static void assertReadsBack(Site site) {
        for (String text : new String[] {WRITER.yaml(site), WRITER.canonicalJson(site)}) {
            assertThat(TestSites.problems(text)).as(text).isEmpty();
            Site again = TestSites.site(text);
            assertThat(again).isEqualTo(site);
            assertThat(WRITER.digest(again)).isEqualTo(WRITER.digest(site));
        }
    }

    @Test
    void canonicalJsonHasFixedOrderShortNumbersAndNothingMissing() {
        String text = "format: 1\nhouse:\n  supply: {loopImpedanceOhm: 0.30, lines: ONE, nominalVoltageV: 230.0}\n";
        assertThat(WRITER.canonicalJson(TestSites.site(text)))
                .isEqualTo("{\"format\":1,\"house\":{\"place\":{},\"gridOperator\":{},\"supply\":{\"lines\":\"ONE\","
                        + "\"nominalVoltageV\":230,\"loopImpedanceOhm\":0.3}}}");
    }

    @Test
    void yamlIsLaidOutAsAPersonWould() {
        String yaml = WRITER.yaml(TestSites.site(TestSites.cottage()));
        assertThat(yaml)
                .startsWith("format: 1\nhouse:\n  place:\n    designation: Weaver's cottage\n")
                .contains("  meters:\n    - id: meter\n      fedFrom: supply\n      conductors: [L1, ")
                .contains("    cable: {lengthM: 5, crossSectionMm2: 10, material: COPPER, insulation: PVC, method: C,")
                .contains("      edition: \"1983\"\n");
    }

    @Test
    void theDigestIsThatOfTheCanonicalJson() {
        Site site = TestSites.site(TestSites.cottage());
        assertThat(WRITER.digest(site))
                .isEqualTo(Digest.of(WRITER.canonicalJson(site).getBytes(StandardCharsets.UTF_8)));
    }
}
