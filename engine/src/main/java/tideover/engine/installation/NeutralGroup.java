package tideover.engine.installation;

import java.util.List;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/**
 * A separate neutral in one operating state: everything joined by neutral conductors alone.
 *
 * @param sources       whose neutral terminals belong to it; the supply first, then those that are live
 * @param live          whether a live source or a live line belongs to it
 * @param earthed       its connections to earth, the network's own counted as the supply; one PEN with all its splits
 *                      counts once
 */
public record NeutralGroup(List<ThingId> sources, boolean live, List<Thing> earthed) {
    public NeutralGroup {
        sources = List.copyOf(sources);
        earthed = List.copyOf(earthed);
    }

    /** Whether something holds its voltage: a live source, or the network's neutral, which is earthed even while dead. */
    public boolean isHeld(View view) {
        for (ThingId source : sources)
            if (source.equals(ThingId.SUPPLY) || view.sources().contains(source)) return true;
        return false;
    }
}
