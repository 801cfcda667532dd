package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Unit;
import tideover.engine.site.Fed;
import tideover.engine.site.Material;
import tideover.engine.site.Meter;
import tideover.engine.site.Thing;
import tideover.engine.wiring.schedule.Ferrule;
import tideover.engine.wiring.schedule.Laying;
import tideover.engine.wiring.schedule.PowerEnd;
import tideover.engine.wiring.schedule.PowerRow;
import tideover.engine.wiring.schedule.Via;
import tideover.papers.DeviceText;
import tideover.papers.Wording;

/** The power schedule: every conductor the job touches, from terminal to terminal. */
final class PowerPart implements WiringPart {

    private static final double MM_PER_M = 1000;

    @Override
    public String name() {
        return "power";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        Wording wording = wiring.wording();
        List<String> notes = new ArrayList<>();
        notes.add(wording.text("wiring.power.how"));
        String country = wiring.installation().site().house().place().country();
        ColourWords colours = new ColourWords(wording);
        notes.addAll(colours.clashing(wiring.tables().colours(), country));
        notes.addAll(colours.older(wiring.tables().colours(), country));
        List<Listing.Group> groups = new ArrayList<>();
        for (String run : wiring.schedules().power().runs()) {
            List<PowerRow> rows = wiring.schedules().power().run(run);
            groups.add(new Listing.Group(
                    title(rows, wording),
                    rows.stream()
                            .map(row -> cells(row, !before(rows).isEmpty(), wiring))
                            .toList()));
        }
        if (groups.isEmpty()) notes.add(wording.text("wiring.power.none"));
        return List.of(new Listing(name(), wording.text("wiring.power"), notes, columns(wording), groups));
    }

    private static List<Column> columns(Wording wording) {
        return List.of(
                Column.words("wire", wording.text("wiring.wire"), 19),
                Column.data("run"),
                Column.data("thing"),
                Column.data("part"),
                Column.data("conductor"),
                Column.data("fromThing"),
                Column.data("fromSide"),
                Column.words("from", wording.text("wiring.from"), 48),
                Column.data("toThing"),
                Column.data("toSide"),
                Column.words("to", wording.text("wiring.to"), 48),
                Column.words("via", wording.text("wiring.via"), 34),
                Column.data("laying"),
                Column.words("colour", wording.text("wiring.colour.head"), 33),
                Column.numbers("crossSectionMm2", wording.text("wiring.section"), 15),
                Column.data("sectionBasis"),
                Column.data("material"),
                Column.numbers("lengthM", wording.text("wiring.length"), 13),
                Column.toRead(wording.text("wiring.ferrule"), 15),
                Column.data("ferruleFromM"),
                Column.data("ferruleToM"),
                Column.toRead(wording.text("wiring.torque"), 17),
                Column.data("torqueFromNm"),
                Column.data("torqueToNm"),
                Column.data("labelFrom"),
                Column.data("labelTo"),
                Column.words("before", wording.text("wiring.before"), 28));
    }

    /** @param beforeIsTold whether the title of the run tells where it began as found */
    private static List<Cell> cells(PowerRow row, boolean beforeIsTold, WiringData wiring) {
        Wording wording = wiring.wording();
        return List.of(
                Cell.of(row.designation()),
                Cell.of(row.run()),
                Cell.of(row.thing().text()),
                Cell.of(row.part().name()),
                Cell.of(row.conductor(), wording),
                Cell.of(row.from().thing().text()),
                side(row.from()),
                Cell.of(row.from().text()),
                Cell.of(row.to().thing().text()),
                side(row.to()),
                Cell.of(row.to().text()),
                Cell.of(via(row, wiring)),
                Cell.of(row.laying().name()),
                Cell.of(
                        new ColourWords(wording).of(row.colour(), row.endMark()),
                        row.colour() == null ? null : row.colour().code()),
                row.laying() == Laying.DIRECT ? Cell.EMPTY : new Cell(section(row, wording), row.crossSectionMm2()),
                Cell.of(row.basis().name()),
                Cell.of(row.material() == null ? null : row.material().name()),
                row.laying() == Laying.DIRECT ? Cell.EMPTY : Cell.of(row.lengthM(), Unit.M, wording),
                Cell.of(ferrule(row, wording)),
                sleeve(row.ferruleFrom()),
                sleeve(row.ferruleTo()),
                Cell.of(torque(row, wording)),
                Cell.of("", row.from().torqueNm()),
                Cell.of("", row.to().torqueNm()),
                Cell.of(row.labelFrom()),
                Cell.of(row.labelTo()),
                before(row, beforeIsTold));
    }

    private static Cell sleeve(@Nullable Ferrule ferrule) {
        return Cell.of("", ferrule == null ? null : ferrule.sleeveLengthM());
    }

    private static Cell before(PowerRow row, boolean isTold) {
        if (row.before() == null) return Cell.EMPTY;
        String terminal = row.before().text();
        return Cell.of(isTold ? "" : terminal, terminal);
    }

    private static Cell side(PowerEnd end) {
        return Cell.of(end.side() == null ? null : end.side().name());
    }

    /** What all conductors of a run have in common. */
    private static String title(List<PowerRow> rows, Wording wording) {
        PowerRow first = rows.get(0);
        String metal = first.material() == Material.ALUMINIUM ? " Al" : "";
        String what = first.laying() == Laying.CABLE || first.laying() == Laying.EXISTING
                ? wording.text(
                        "wiring.laying." + first.laying().name() + ".cable",
                        String.valueOf(rows.size()),
                        section(first, wording) + metal)
                : wording.text("wiring.laying." + first.laying().name());
        if (first.basis() == PowerRow.Basis.LIKE_THE_PATH) what = wording.text("wiring.likeThePath", what);
        String before = before(rows);
        if (!before.isEmpty()) what = wording.text("wiring.moved", what, before);
        return wording.text("wiring.run", first.run(), wording.name(first.thing()), what);
    }

    /** Where a run began as found, if all of it began at one thing; else empty, and each row says it. */
    private static String before(List<PowerRow> rows) {
        Set<String> tags = new HashSet<>();
        for (PowerRow row : rows)
            tags.add(row.before() == null ? "" : row.before().tag());
        return tags.size() == 1 ? tags.iterator().next() : "";
    }

    private static String section(PowerRow row, Wording wording) {
        return row.crossSectionMm2() == null ? "?" : wording.amount(row.crossSectionMm2(), Unit.MM2);
    }

    private static String via(PowerRow row, WiringData wiring) {
        Thing thing = wiring.installation().find(row.thing()).orElse(null);
        List<String> devices = new ArrayList<>();
        for (Via via : row.via()) devices.add(device(via, thing, wiring.wording()));
        return String.join(", ", devices);
    }

    private static String device(Via via, @Nullable Thing thing, Wording wording) {
        DeviceText text = new DeviceText(wording);
        if (via == Via.MEASURING_FUSE && thing instanceof Meter meter && meter.measuringNeutralFuseA() != null)
            return wording.text("diagram.fuse", wording.amount(meter.measuringNeutralFuseA(), Unit.A));
        if (via == Via.OVERCURRENT_DEVICE && thing instanceof Fed fed) return text.of(fed.protection());
        if (thing instanceof Fed fed && fed.rcd() != null)
            return wording.text("wiring.rcd", text.of(Objects.requireNonNull(fed.rcd())));
        return "?";
    }

    /** One size where both ends take the same. */
    private static String ferrule(PowerRow row, Wording wording) {
        Ferrule from = row.ferruleFrom();
        Ferrule to = row.ferruleTo();
        if (from == null && to == null) return "";
        if (Objects.equals(from, to)) return size(to, wording);
        return wording.text("wiring.ends", size(from, wording), size(to, wording));
    }

    private static String size(@Nullable Ferrule ferrule, Wording wording) {
        return ferrule == null
                ? "–"
                : wording.text("wiring.ferrule.size", wording.amount(ferrule.sleeveLengthM() * MM_PER_M, Unit.RATIO));
    }

    private static String torque(PowerRow row, Wording wording) {
        Double from = row.from().torqueNm();
        Double to = row.to().torqueNm();
        if (from == null && to == null) return "";
        return wording.text("wiring.ends", number(from, wording), number(to, wording));
    }

    private static String number(@Nullable Double torqueNm, Wording wording) {
        return torqueNm == null ? "–" : wording.amount(torqueNm, Unit.RATIO);
    }
}
