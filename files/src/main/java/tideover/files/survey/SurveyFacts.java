package tideover.files.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.FactId;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.survey.Things.Stated;
import tideover.files.tables.SurveyOrder;

/** The facts a survey asks for, in the order in which they are worth asking. Safe to share between threads. */
public final class SurveyFacts {
    /** So many stand on top: what sets the price. */
    public static final int FIRST = 20;

    private final FieldTable fields;
    private final List<String> order = SurveyOrder.load();

    public SurveyFacts(FieldTable fields) {
        this.fields = fields;
    }

    /**
     * One fact to be asked for.
     *
     * @param thing whose fact
     * @param field its row of the field table
     */
    public record Asked(FactId fact, Stated thing, Field field) {}

    /** Those that set the price, in their order, and among things of a kind the heaviest first; then what else is waited for. */
    public List<Asked> of(Site site, Things things, Waiting waiting) {
        List<Asked> asked = new ArrayList<>();
        for (FactId fact : facts(site, things, waiting)) find(fact, things).ifPresent(asked::add);
        return asked;
    }

    /** A fact as it is asked for; nothing for a group, which is asked for fact by fact, and where nobody can say it. */
    public Optional<Asked> find(FactId fact, Things things) {
        Stated thing = things.find(fact.thing()).orElse(null);
        if (thing == null || !thing.isAskedAbout()) return Optional.empty();
        return fields.find(thing.section() + "." + fact.field())
                .filter(field -> field.kind() != FieldKind.GROUP && field.kind() != FieldKind.GROUPS)
                .map(field -> new Asked(fact, thing, field));
    }

    private List<FactId> facts(Site site, Things things, Waiting waiting) {
        List<FactId> facts = new ArrayList<>();
        Comparator<FactId> heaviest =
                Comparator.comparingInt((FactId fact) -> waiting.weight(fact)).reversed();
        for (String path : order) {
            String section = path.substring(0, path.indexOf('.'));
            String name = path.substring(section.length() + 1);
            if (path.equals("supply.penSplitAt") && !mayPartPen(site)) continue;
            things.of(section).stream()
                    .filter(thing -> thing.status() != Status.REMOVED)
                    .filter(thing -> isAsked(thing, new FactId(thing.id(), name), waiting))
                    .map(thing -> new FactId(thing.id(), name))
                    .sorted(heaviest)
                    .forEach(facts::add);
        }
        Set<FactId> listed = new HashSet<>(facts);
        waiting.facts().stream()
                .filter(fact -> !listed.contains(fact))
                .sorted(heaviest.thenComparing(FactId::toString))
                .forEach(facts::add);
        return facts;
    }

    /** Of what is only planned nobody can be asked; it counts where something waits for it. */
    private static boolean isAsked(Stated thing, FactId fact, Waiting waiting) {
        return thing.house() != null || waiting.findings(fact) > 0;
    }

    private static boolean mayPartPen(Site site) {
        EarthingSystem earthing = site.house().supply().earthingSystem();
        return earthing == null || earthing == EarthingSystem.TN_C_S;
    }
}
