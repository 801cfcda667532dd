package tideover.web.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.site.Evidence;
import tideover.engine.site.FactSource;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.files.Edit;
import tideover.files.Field;

/**
 * Who says so: a fact about the house that a person types is no longer assumed. Where nothing wider vouches for it, it is
 * noted as got in the way in which one gets such a fact; the survey lets people say it otherwise.
 */
final class Provenance {
    private static final String EVIDENCE = "evidence.";
    private static final String HOUSE = Evidence.HOUSE + ".";

    private Provenance() {}

    /** The same edits, each followed by what the form says of it; then what it says of facts that stay as they are. */
    static List<Edit> with(List<Edit> edits, Said said, TypedValues values) {
        if (said.isNothing()) return edits;
        List<Edit> all = new ArrayList<>();
        Set<String> changed = new HashSet<>();
        for (Edit edit : edits) {
            all.add(edit);
            Optional<Field> field = values.field(edit.path());
            if (field.isEmpty()) continue;
            String fact = TypedValues.fact(edit.path());
            changed.add(fact);
            // What was said of the old value is gone with it.
            if (edit.after() != null)
                all.add(new Edit(
                        EVIDENCE + fact, null, said.evidence(field.get().source())));
        }
        said.confirmed().forEach((fact, before) -> {
            Optional<Field> field = values.field(fact);
            if (field.isPresent() && changed.stream().noneMatch(other -> isInside(other, fact)))
                all.add(new Edit(
                        EVIDENCE + fact,
                        before.isEmpty() ? null : before,
                        said.evidence(field.get().source())));
        });
        return all;
    }

    private static boolean isInside(String inner, String fact) {
        return inner.equals(fact) || inner.startsWith(fact + ".");
    }

    /** The same edits, each followed by what is said of it. */
    static List<Edit> with(Site site, List<Edit> edits, TypedValues values, LocalDate today) {
        List<Edit> all = new ArrayList<>();
        for (Edit edit : edits) {
            all.add(edit);
            Optional<Field> field = values.field(edit.path());
            if (edit.after() == null || field.isEmpty() || !isOfHouse(site, edit.path())) continue;
            String fact = edit.path().startsWith(HOUSE) ? edit.path().substring(HOUSE.length()) : edit.path();
            boolean said = edits.stream().anyMatch(other -> other.path().equals(EVIDENCE + fact));
            if (said || isVouchedFor(site, fact)) continue;
            String origin = origin(field.get().source()).name();
            all.add(new Edit(EVIDENCE + fact, null, "{origin: %s, on: %s}".formatted(origin, today)));
        }
        return all;
    }

    private static boolean isOfHouse(Site site, String path) {
        if (path.startsWith(HOUSE)) return true;
        String thing = path.substring(0, Math.max(0, path.indexOf('.')));
        if (thing.equals(Evidence.PLAN) || thing.equals(Evidence.BUILT)) return false;
        if (!ThingId.isWellFormed(thing)) return false;
        ThingId id = new ThingId(thing);
        return site.plan().things().stream().noneMatch(planned -> planned.id().equals(id))
                && site.built().things().stream().noneMatch(built -> built.id().equals(id));
    }

    /** Whether something is said of the group, the thing or the whole house, other than that it is assumed. */
    private static boolean isVouchedFor(Site site, String fact) {
        for (int dot = fact.lastIndexOf('.'); dot > 0; dot = fact.lastIndexOf('.', dot - 1)) {
            Optional<Origin> wider = said(site, fact.substring(0, dot));
            if (wider.isPresent()) return wider.get() != Origin.ASSUMED;
        }
        return said(site, Evidence.HOUSE)
                .filter(origin -> origin != Origin.ASSUMED)
                .isPresent();
    }

    private static Optional<Origin> said(Site site, String about) {
        return site.evidence().stream()
                .filter(evidence -> evidence.about().equals(about))
                .map(Evidence::origin)
                .findFirst();
    }

    static Origin origin(FactSource source) {
        return switch (source) {
            case MEASURE -> Origin.MEASURED;
            case ASK_OPERATOR -> Origin.DECLARED_BY_OPERATOR;
            case ASK_CUSTOMER -> Origin.DECLARED_BY_CUSTOMER;
            case PHOTO_OF_BOARD, DATA_SHEET, LOOK -> Origin.READ;
        };
    }
}
