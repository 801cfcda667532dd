package tideover.papers.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.StatePicture;
import tideover.engine.assessment.Studies;
import tideover.engine.network.flow.Phasor;
import tideover.engine.rules.Digest;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Fed;
import tideover.engine.site.ThingId;
import tideover.papers.Wording;

/**
 * What was asked of the network of a site, for whoever writes it down.
 *
 * @param wording  knows the names of the site
 * @param site     digest of the site
 * @param rules    what it was studied by
 * @param studies  of the site
 * @param pictures the states asked for
 * @param places   the things asked for
 * @param faultOhm resistance of the faults [Ω]
 */
public record NetworkAnswer(
        Wording wording,
        Digest site,
        RuleBook rules,
        Studies studies,
        List<StatePicture> pictures,
        List<Fed> places,
        double faultOhm) {

    /** Below this a number is what is left over from solving. */
    private static final double NOTHING = 1e-6;

    /** Figures that count in an export: more than any input has, fewer than solving leaves uncertain. */
    private static final int FIGURES = 7;

    public NetworkAnswer {
        pictures = List.copyOf(pictures);
        places = List.copyOf(places);
    }

    boolean isAsked(ThingId place) {
        return places.stream().anyMatch(fed -> fed.id().equals(place));
    }

    /** As it is written down: without the noise of solving; nothing for infinity. */
    static @Nullable Double written(@Nullable Double value) {
        if (value == null || !Double.isFinite(value)) return null;
        if (Math.abs(value) < NOTHING) return 0.0;
        return new BigDecimal(value).round(new MathContext(FIGURES)).doubleValue();
    }

    /** Angle of a quantity [°]; 0 of what is next to nothing. */
    static double angleDeg(Phasor phasor) {
        return phasor.magnitude() < NOTHING ? 0 : phasor.angleDeg();
    }
}
