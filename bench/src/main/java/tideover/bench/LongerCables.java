package tideover.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.Site;

/** Edits of one site: each time another circuit's cable is a little longer, so that no two sites are the same. */
final class LongerCables {

    private final Site site;
    private final List<Length> lengths;

    private record Length(FactId fact, double valueM) {}

    private LongerCables(Site site, List<Length> lengths) {
        this.site = site;
        this.lengths = lengths;
    }

    /** @throws IllegalArgumentException if the site has no length of a cable */
    static LongerCables of(Site site) {
        List<Length> lengths = new ArrayList<>();
        site.planned().values().forEach(thing -> {
            if (thing instanceof Circuit circuit
                    && circuit.cable() != null
                    && circuit.cable().lengthM() != null)
                lengths.add(new Length(
                        circuit.fact("cable.lengthM"), circuit.cable().lengthM()));
        });
        if (lengths.isEmpty())
            throw new IllegalArgumentException("the site has no circuit with a length of its cable to edit");
        return new LongerCables(site, lengths);
    }

    /** The site of one edit: another one for each edit from 0. */
    Site site(int edit) {
        Length length = lengths.get(edit % lengths.size());
        return site.with(length.fact(), length.valueM() + 0.0001 * (1 + edit / lengths.size()));
    }

    List<Site> sites(int firstEdit, int count) {
        return IntStream.range(firstEdit, firstEdit + count)
                .mapToObj(this::site)
                .toList();
    }

    /** How large the site is. */
    String size() {
        return lengths.size() + " circuits";
    }
}
