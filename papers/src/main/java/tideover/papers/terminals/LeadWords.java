package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Unit;
import tideover.engine.site.Fed;
import tideover.engine.site.Meter;
import tideover.engine.site.ProtectiveDevice;
import tideover.engine.site.RcdGroup;
import tideover.engine.site.Thing;
import tideover.engine.wiring.colour.Colour;
import tideover.engine.wiring.schedule.ControlEnd;
import tideover.engine.wiring.schedule.CoreRow;
import tideover.engine.wiring.schedule.Laying;
import tideover.engine.wiring.schedule.PowerEnd;
import tideover.engine.wiring.schedule.PowerRow;
import tideover.engine.wiring.schedule.Via;
import tideover.papers.DeviceText;
import tideover.papers.Wording;
import tideover.papers.wiring.ColourWords;

/** Words a row of the schedules as it is seen from one of its ends. */
final class LeadWords {

    private static final double MM_PER_M = 1000;

    private final Installation installation;
    private final Wording wording;
    private final ColourWords colours;

    LeadWords(Installation installation, Wording wording) {
        this.installation = installation;
        this.wording = wording;
        this.colours = new ColourWords(wording);
    }

    /** @param other the end it is not seen from */
    Lead of(PowerRow row, PowerEnd other) {
        List<String> look = new ArrayList<>();
        if (row.laying() == Laying.DIRECT) look.add(wording.text("terminals.direct"));
        else {
            if (row.colour() != null) look.add(colour(row.colour(), row.endMark()));
            look.add(section(row.crossSectionMm2()));
            if (row.laying() == Laying.EXISTING) look.add(wording.text("terminals.existing"));
        }
        String via = via(row);
        String end = via.isEmpty()
                ? wording.text("terminals.to", other.text())
                : wording.text("terminals.toOver", other.text(), via);
        return new Lead(row.designation(), String.join(" ", look), end);
    }

    /** @param other the end it is not seen from; nothing: it is not connected */
    Lead of(CoreRow row, @Nullable ControlEnd other) {
        List<String> look = new ArrayList<>();
        look.add(mark(row));
        look.add(section(row.crossSectionMm2()));
        if (row.pair() > 0) look.add(wording.text("terminals.pair", String.valueOf(row.pair())));
        String end = other == null ? wording.text("terminals.loose") : wording.text("terminals.to", other.text());
        return new Lead(row.designation(), String.join(" ", look), end);
    }

    /** What the maker demands of a terminal. */
    String demands(PowerEnd end) {
        List<String> demands = new ArrayList<>();
        if (end.torqueNm() != null)
            demands.add(wording.text("terminals.torque", wording.amount(end.torqueNm(), Unit.RATIO)));
        if (end.strippedLengthM() != null)
            demands.add(wording.text("terminals.strip", wording.amount(end.strippedLengthM() * MM_PER_M, Unit.RATIO)));
        return String.join(" · ", demands);
    }

    /** Colour in words, or the number printed on a core. */
    String mark(CoreRow row) {
        if (row.colour() != null) return colour(row.colour(), null);
        return row.mark() == null ? wording.text("terminals.unmarked") : wording.text("terminals.core", row.mark());
    }

    private String colour(Colour colour, @Nullable Colour endMark) {
        return colours.of(colour, endMark);
    }

    String section(@Nullable Double crossSectionMm2) {
        return (crossSectionMm2 == null ? "?" : wording.amount(crossSectionMm2, Unit.MM2)).replace(' ', '\u00a0');
    }

    /** Devices between the ends, but for one that is a card of its own. */
    private String via(PowerRow row) {
        Thing thing = installation.find(row.thing()).orElse(null);
        if (thing instanceof ProtectiveDevice || thing instanceof RcdGroup) return "";
        DeviceText text = new DeviceText(wording);
        List<String> devices = new ArrayList<>();
        for (Via via : row.via()) {
            if (via == Via.MEASURING_FUSE && thing instanceof Meter meter && meter.measuringNeutralFuseA() != null)
                devices.add(wording.text("diagram.fuse", wording.amount(meter.measuringNeutralFuseA(), Unit.A)));
            if (via == Via.OVERCURRENT_DEVICE && thing instanceof Fed fed) devices.add(text.of(fed.protection()));
            if (via == Via.RESIDUAL_DEVICE && thing instanceof Fed fed && fed.rcd() != null)
                devices.add(wording.text("wiring.rcd", text.of(fed.rcd())));
        }
        return String.join(", ", devices);
    }
}
