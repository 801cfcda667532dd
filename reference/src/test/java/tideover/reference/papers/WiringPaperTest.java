package tideover.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Digest;
import tideover.engine.wiring.schedule.CoreRow;
import tideover.engine.wiring.schedule.PowerRow;
import tideover.files.FieldTable;
import tideover.files.tables.TableFiles;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.handover.Handover;
import tideover.papers.handover.WiringPaper;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.ListingText;
import tideover.papers.wiring.WiringData;
import tideover.papers.wiring.WiringPart;
import tideover.reference.Houses;

/** The wiring lists as they hang in the open board. */
class WiringPaperTest {

    private static final Wording WORDING = Wording.of(Locale.ENGLISH, FieldTable.load());
    private static final Stamp STAMP = new Stamp(Digest.of("revision"), LocalDate.of(2026, 11, 25));

    static List<Path> houses() {
        List<Path> houses = new ArrayList<>(List.of(Houses.TOWN_HOUSE, Houses.FARMHOUSE, Houses.TERRACE));
        houses.addAll(Houses.yamlBelow(Houses.EXAMPLES.resolve("arrangements")));
        return houses;
    }

    private static WiringData wiring(Path house) {
        return WiringData.of(Installation.of(Houses.read(house)), TableFiles.wiring(), List.of(), WORDING, 0.3);
    }

    private static byte[] pdf(WiringData wiring, List<WiringPart> parts) {
        List<Listing> listings =
                parts.stream().flatMap(part -> part.of(wiring).stream()).toList();
        return new WiringPaper(listings, wiring.wording(), STAMP).pdf();
    }

    @ParameterizedTest
    @MethodSource("houses")
    void everyWireAndEveryCoreIsPrintedOnceAndNothingLeavesThePage(Path house) {
        WiringData wiring = wiring(house);
        PrintedPaper paper = new PrintedPaper(pdf(wiring, WiringPart.OF_HANDOVER));
        assertThat(paper.pages()).allSatisfy(page -> {
            assertThat(page.beyond()).isEmpty();
            assertThat(page.isWide()).isTrue();
        });
        assertThat(paper.looseFonts()).isEmpty();
        for (PowerRow row : wiring.schedules().power().rows())
            assertThat(count(row.designation(), paper.text()))
                    .as(row.designation())
                    .isEqualTo(1);
        for (CoreRow row : wiring.schedules().control().rows())
            assertThat(count(row.designation(), paper.text()))
                    .as(row.designation())
                    .isEqualTo(1);
    }

    private static long count(String designation, String text) {
        return Pattern.compile("(?<![A-Z0-9.])" + Pattern.quote(designation) + "(?![A-Z0-9])")
                .matcher(text)
                .results()
                .count();
    }

    @ParameterizedTest
    @MethodSource("houses")
    void onTheScreenEveryListingFitsIntoItsColumns(Path house) {
        WiringData wiring = wiring(house);
        for (WiringPart part : WiringPart.ALL)
            assertThat(part.of(wiring).stream()
                            .flatMap(listing -> ListingText.of(listing).lines()))
                    .as(part.name())
                    .allMatch(line -> line.length() <= 110)
                    .noneMatch(line -> line.contains("{") || line.contains("NaN") || line.contains("null"));
    }

    /** AS/NZS 3000 3.8: neutral black, third line dark blue; IEC 60445: second line black, neutral blue. */
    @Test
    void whereBlackIsTheNeutralTheScheduleWarnsOfCablesInWhichItIsALine() {
        WiringData wiring = wiring(Houses.EXAMPLES.resolve("arrangements/neutral-through.yaml"));
        assertThat(String.join(" ", notes(wiring)))
                .contains("black is N here and L2 there")
                .contains("blue is L3 here and N there");
        assertThat(notes(wiring(Houses.TERRACE))).noneMatch(note -> note.contains("there"));
    }

    private static List<String> notes(WiringData wiring) {
        return WiringPart.ALL.get(0).of(wiring).get(0).notes();
    }

    @Test
    void sameListsGiveTheSameBytes() {
        WiringData wiring = wiring(Houses.TERRACE);
        assertThat(pdf(wiring, WiringPart.ALL)).isEqualTo(pdf(wiring, WiringPart.ALL));
    }

    @Test
    void handoverFileHasThemAsAChapter() {
        List<Listing> listings = WiringPart.OF_HANDOVER.stream()
                .flatMap(part -> part.of(wiring(Houses.TERRACE)).stream())
                .toList();
        PrintedPaper paper = new PrintedPaper(Handover.of(Houses.explain(Houses.read(Houses.TERRACE)), WORDING, STAMP)
                .withWiring(listings)
                .pdf());
        assertThat(paper.bookmarks()).anySatisfy(bookmark -> {
            assertThat(bookmark.name()).isEqualTo("Wiring");
            assertThat(paper.pages().get(bookmark.page() - 1).text()).contains("Power wiring schedule");
        });
    }
}
