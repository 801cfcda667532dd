package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.FactId;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingKind;
import tideover.engine.wiring.schedule.Cut;
import tideover.engine.wiring.schedule.PartsList;
import tideover.papers.DeviceText;
import tideover.papers.FactText;
import tideover.papers.Wording;

/** The parts list: devices with their ratings, protective devices, ferrules, cables. From data only, no makers. */
final class PartsPart implements WiringPart {

    private static final double MM_PER_M = 1000;

    /** Facts of a device that are no ratings: where it is and what hangs on it. */
    private static final Set<String> NO_RATING = Set.of(
            "role",
            "needsMeasuringNeutral",
            "measuringNeutralLimitA",
            "fedFrom",
            "neutralFrom",
            "conductors",
            "cable",
            "protection",
            "rcd",
            "neutralAt",
            "earthAt",
            "leadsTo",
            "isolates",
            "inverter",
            "inverters",
            "measuringNeutralFrom",
            "measuringNeutralFuseA",
            "terminals",
            "room",
            "place",
            "azimuthDeg",
            "tiltDeg",
            "builtInto",
            "spareWays");

    @Override
    public String name() {
        return "parts";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        Wording wording = wiring.wording();
        PartsList parts = wiring.schedules().parts();
        List<Listing.Group> groups = new ArrayList<>();
        group(groups, "devices", devices(parts, wording), wording);
        group(groups, "protections", protections(parts, wording), wording);
        group(groups, "ferrules", ferrules(parts, wording), wording);
        group(groups, "cables", cables(parts, wording), wording);
        return List.of(new Listing(
                name(),
                wording.text("wiring.parts"),
                List.of(wording.text(groups.isEmpty() ? "wiring.parts.none" : "wiring.parts.how")),
                List.of(
                        Column.numbers("count", wording.text("wiring.count"), 16),
                        Column.words("unit", "", 9),
                        Column.words("what", wording.text("wiring.what"), 62),
                        Column.words("ratings", wording.text("wiring.ratings"), 113),
                        Column.words("for", wording.text("wiring.for"), 70)),
                groups));
    }

    private static void group(List<Listing.Group> groups, String key, List<List<Cell>> rows, Wording wording) {
        if (!rows.isEmpty()) groups.add(new Listing.Group(wording.text("wiring.parts." + key), rows));
    }

    private static List<Cell> row(int count, String what, String ratings, String purpose) {
        return List.of(Cell.of(count), Cell.EMPTY, Cell.of(what), Cell.of(ratings), Cell.of(purpose));
    }

    private static List<List<Cell>> devices(PartsList parts, Wording wording) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Thing device : parts.devices())
            rows.add(
                    row(1, wording.heading(ThingKind.of(device)), ratings(device, wording), wording.name(device.id())));
        return rows;
    }

    private static String ratings(Thing device, Wording wording) {
        FactText text = new FactText(wording);
        List<String> ratings = new ArrayList<>();
        for (FactId fact : FactText.known(device)) {
            String group = fact.field().split("\\.", 2)[0];
            if (!NO_RATING.contains(group))
                ratings.add(wording.text("handover.fact", wording.field(fact), text.value(device, fact)));
        }
        return String.join(" · ", ratings);
    }

    private static List<List<Cell>> protections(PartsList parts, Wording wording) {
        List<List<Cell>> rows = new ArrayList<>();
        for (PartsList.Protection alike : parts.protections())
            rows.add(row(
                    alike.things().size(),
                    wording.text(
                            "wiring.lines",
                            PhraseArg.verbatim(device(alike.overcurrent(), alike.residual(), wording)),
                            PhraseArg.count(alike.lines())),
                    ratings(alike.overcurrent(), alike.residual(), wording),
                    wording.names(alike.things())));
        for (PartsList.MeasuringFuse fuse : parts.measuring())
            rows.add(row(
                    fuse.meters().size(),
                    wording.text("diagram.fuse", wording.amount(fuse.ratedCurrentA(), Unit.A)),
                    wording.text("wiring.measuring"),
                    wording.names(fuse.meters())));
        return rows;
    }

    private static String device(
            @Nullable OvercurrentDevice overcurrent, @Nullable ResidualDevice residual, Wording wording) {
        DeviceText text = new DeviceText(wording);
        if (residual == null) return text.of(overcurrent);
        String rcd = wording.text("wiring.rcd", text.of(residual));
        return overcurrent == null ? rcd : wording.text("wiring.rcbo", text.of(overcurrent), text.of(residual));
    }

    private static String ratings(
            @Nullable OvercurrentDevice overcurrent, @Nullable ResidualDevice residual, Wording wording) {
        List<String> ratings = new ArrayList<>();
        if (overcurrent != null && overcurrent.breakingCapacityA() != null)
            ratings.add(wording.text("wiring.breaks", wording.amount(overcurrent.breakingCapacityA(), Unit.A)));
        if (residual != null && residual.ratedCurrentA() != null)
            ratings.add(wording.amount(residual.ratedCurrentA(), Unit.A));
        if (residual != null && residual.delay() != null)
            ratings.add(wording.text("wiring.delay", wording.word(residual.delay())));
        if (residual != null && residual.feedDirection() != null) ratings.add(wording.word(residual.feedDirection()));
        return String.join(" · ", ratings);
    }

    private static List<List<Cell>> ferrules(PartsList parts, Wording wording) {
        List<List<Cell>> rows = new ArrayList<>();
        for (PartsList.Ferrules ferrules : parts.ferrules())
            rows.add(row(
                    ferrules.count(),
                    wording.text(
                            "wiring.ferrule.of", wording.amount(ferrules.size().crossSectionMm2(), Unit.MM2)),
                    wording.text(
                            "wiring.ferrule.size",
                            wording.amount(ferrules.size().sleeveLengthM() * MM_PER_M, Unit.RATIO)),
                    ""));
        return rows;
    }

    private static List<List<Cell>> cables(PartsList parts, Wording wording) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Cut cut : parts.cutting().cuts())
            rows.add(List.of(
                    new Cell(cut.isUnmeasured() ? "?" : wording.amount(cut.sumM(), Unit.RATIO), cut.sumM()),
                    Cell.of("m"),
                    Cell.of(CuttingPart.stock(cut.stock(), wording)),
                    Cell.of(
                            cut.unmeasured() == 0
                                    ? ""
                                    : wording.text("wiring.measureMore", PhraseArg.count(cut.unmeasured()))),
                    Cell.EMPTY));
        return rows;
    }
}
