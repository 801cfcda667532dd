package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Material;
import tideover.engine.wiring.schedule.Cut;
import tideover.engine.wiring.schedule.CuttingList;
import tideover.papers.Wording;

/** The cutting list: what to cut, by sort. */
final class CuttingPart implements WiringPart {

    @Override
    public String name() {
        return "cutting";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        Wording wording = wiring.wording();
        CuttingList list = wiring.schedules().cutting();
        List<List<Cell>> rows = new ArrayList<>();
        for (Cut cut : list.cuts()) rows.add(cells(cut, wording));
        String how = rows.isEmpty()
                ? wording.text("wiring.cutting.none")
                : wording.text("wiring.cutting.how", PhraseArg.amount(list.allowanceM(), Unit.M));
        return List.of(new Listing(
                name(),
                wording.text("wiring.cutting"),
                List.of(how),
                List.of(
                        Column.words("stock", wording.text("wiring.stock"), 60),
                        Column.data("kind"),
                        Column.data("cores"),
                        Column.data("crossSectionMm2"),
                        Column.data("thinnestCoreMm2"),
                        Column.data("colour"),
                        Column.data("material"),
                        Column.numbers("pieces", wording.text("wiring.pieces"), 16),
                        Column.numbers("unmeasured", wording.text("wiring.unmeasured"), 24),
                        Column.numbers("sumM", wording.text("wiring.sum"), 20),
                        Column.words("lengths", wording.text("wiring.lengths"), 150)),
                rows.isEmpty() ? List.of() : List.of(new Listing.Group("", rows))));
    }

    private static List<Cell> cells(Cut cut, Wording wording) {
        Cut.Stock stock = cut.stock();
        List<String> lengths = new ArrayList<>();
        for (Cut.Piece piece : cut.pieces())
            lengths.add(wording.text(
                    "wiring.piece",
                    piece.designation(),
                    piece.lengthM() == null ? "?" : wording.amount(piece.lengthM(), Unit.M)));
        return List.of(
                Cell.of(stock(stock, wording)),
                Cell.of(stock.kind().name()),
                Cell.of(stock.cores()),
                Cell.of(stock.crossSectionMm2(), Unit.MM2, wording),
                Cell.of(stock.thinnestCoreMm2(), Unit.MM2, wording),
                Cell.of(stock.colour() == null ? null : stock.colour().code()),
                Cell.of(stock.material() == null ? null : stock.material().name()),
                Cell.of(cut.pieces().size()),
                cut.unmeasured() == 0 ? new Cell("", 0) : Cell.of(cut.unmeasured()),
                new Cell(cut.isUnmeasured() ? "?" : wording.amount(cut.sumM(), Unit.M), cut.sumM()),
                Cell.of(String.join(", ", lengths)));
    }

    /** A sort of cable or wire in words. */
    static String stock(Cut.Stock stock, Wording wording) {
        String section = stock.crossSectionMm2() == null ? "?" : wording.amount(stock.crossSectionMm2(), Unit.MM2);
        if (stock.thinnestCoreMm2() != null)
            section = wording.text("wiring.thinnest", section, wording.amount(stock.thinnestCoreMm2(), Unit.MM2));
        if (stock.material() == Material.ALUMINIUM) section += " Al";
        String text = wording.text("wiring.stock." + stock.kind().name(), String.valueOf(stock.cores()), section);
        return stock.colour() == null ? text : text + ", " + new ColourWords(wording).of(stock.colour(), null);
    }
}
