package tideover.papers;

import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Unit;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.ResidualDevice;

/** Protective devices as the trade writes them: B16, fuse 35 A, 30 mA type A. A fact nobody has stated is a question mark. */
public final class DeviceText {

    private final Wording wording;

    public DeviceText(Wording wording) {
        this.wording = wording;
    }

    /** Kind and rated current. */
    public String of(@Nullable OvercurrentDevice device) {
        if (device == null || device.ratedCurrentA() == null) return "?";
        String rated = wording.amount(device.ratedCurrentA(), Unit.A);
        if (device.kind() == OvercurrentKind.FUSE) return wording.text("diagram.fuse", rated);
        return (device.curve() == null ? "? " : wording.word(device.curve())) + rated.replace(" A", "");
    }

    /** Rated residual current and type. */
    public String of(ResidualDevice rcd) {
        String type = rcd.type() == null ? "?" : wording.word(rcd.type());
        Double current = rcd.ratedResidualCurrentA();
        return wording.text("handover.rcd", current == null ? "?" : wording.amount(current, Unit.RESIDUAL_A), type);
    }
}
