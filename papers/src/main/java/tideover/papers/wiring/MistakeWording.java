package tideover.papers.wiring;

import java.util.List;
import tideover.engine.installation.control.Wire;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.model.HouseModel;
import tideover.papers.Wording;

/** Words mistakes and failures: what was done, to what, where. */
public final class MistakeWording {

    private final WiringWording wiring;
    private final Wording wording;
    private final HouseModel model;

    public MistakeWording(WiringWording wiring, HouseModel model) {
        this.wiring = wiring;
        this.wording = wiring.words();
        this.model = model;
    }

    /** A mistake as one clause. */
    public String of(Mistake mistake) {
        List<String> details = mistake.details();
        String one = detail(details, 0);
        String two = detail(details, 1);
        String other = wiring.name(mistake.other());
        switch (mistake.kind()) {
            case CORE_OPEN, CORE_TO_PLUS, CORE_TO_REFERENCE, CORE_TO_EARTH, CORE_TO_LINE ->
                one = core(mistake.place(), one);
            case CORES_TOUCHING, CORES_EXCHANGED -> {
                one = core(mistake.place(), one);
                two = core(mistake.place(), two);
                other = terminal(detail(details, 2));
            }
            case WRONG_NUMBER -> {
                one = core(mistake.place(), one);
                other = terminal(two);
            }
            case ROTATED -> one = String.join(", ", details);
            case WRONG_NEUTRAL_BAR, MEASURING_NEUTRAL_MOVED -> other = bar(one, other);
            default -> {}
        }
        return wording.text("mistake." + mistake.kind().name(), wiring.name(mistake.place()), one, two, other);
    }

    /** The same at the beginning of a line. */
    public String heading(Mistake mistake) {
        return wording.capitalised(of(mistake));
    }

    private static String detail(List<String> details, int index) {
        return index < details.size() ? details.get(index) : "";
    }

    private String bar(String side, String thing) {
        return switch (side) {
            case "grid side" -> wording.text("mistake.gridSide", thing);
            case "island side" -> wording.text("mistake.islandSide", thing);
            default -> thing;
        };
    }

    /** A terminal with its device, such as {@code QA1:A1}. */
    private String terminal(String id) {
        return TerminalId.isWellFormed(id) ? wiring.terminal(TerminalId.of(id)) : id;
    }

    /** A core by its mark and place, written {@code mark#place}. */
    private String core(ThingId cable, String mark) {
        int hash = mark.lastIndexOf('#');
        return hash < 0 ? mark : core(cable, Integer.parseInt(mark.substring(hash + 1)) - 1);
    }

    /** The core at a place of a cable, counted from 0. */
    String core(ThingId cable, int position) {
        for (Wire wire : model.wiring().wires())
            if (wire.cable().id().equals(cable) && wire.position() == position) return core(wire);
        return wording.text("mistake.core.unknown", String.valueOf(position + 1), wiring.tag(cable));
    }

    /** A core with both its ends. */
    String core(Wire wire) {
        String mark = wire.core().mark() == null
                ? String.valueOf(wire.position() + 1)
                : wire.core().mark();
        return wording.text(
                "mistake.core",
                mark,
                wiring.tag(wire.cable().id()),
                wiring.terminal(wire.from()),
                wiring.terminal(wire.to()));
    }
}
