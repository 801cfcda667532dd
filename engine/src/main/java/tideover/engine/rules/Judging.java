package tideover.engine.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.FactId;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Origin;
import tideover.engine.site.Origins;
import tideover.engine.site.ThingId;

/** What a check is handed beside its subject: limits, origins of facts, and where findings go. */
public final class Judging {

    private final RuleBook rules;
    private final Origins origins;
    private final Function<ThingId, List<FactId>> assumedWiring;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<FindingKey, List<Phrase>> calculations = new HashMap<>();
    private final Recorder recorder = new Recorder();
    private final Trace trace;
    private @Nullable Check<?> check;

    /**
     * @param rules        limits
     * @param origins      where facts come from
     * @param assumedWiring of a thing: how it is connected, as far as that is only assumed
     * @param calculations whether calculations are kept
     */
    public Judging(
            RuleBook rules, Origins origins, Function<ThingId, List<FactId>> assumedWiring, Calculations calculations) {
        this.rules = rules;
        this.origins = origins;
        this.assumedWiring = assumedWiring;
        this.trace = calculations == Calculations.KEPT ? recorder : Trace.NONE;
    }

    /** Whether the lines behind findings are kept. */
    public enum Calculations {
        KEPT,
        NOT_KEPT
    }

    /** Has a check judge a subject. */
    public <S> void apply(Check<S> rule, S subject) {
        check = rule;
        recorder.lines.clear();
        rule.judge(subject, this);
    }

    /** The limit of this id, if the rule book has it. */
    public Optional<Limit> limit(String id) {
        return rules.find(id);
    }

    /** The rule book itself. */
    public RuleBook rules() {
        return rules;
    }

    /** Takes down the lines of the finding that is being made. */
    public Trace trace() {
        return trace;
    }

    /** Begins a finding for which the state does not matter. */
    public Draft at(ThingId place) {
        return new Draft(place, null);
    }

    /** Begins a finding decided by one state. */
    public Draft at(ThingId place, OperatingState state) {
        return new Draft(place, state);
    }

    /** What was found so far. */
    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** The lines behind each finding; empty unless kept. */
    public Map<FindingKey, List<Phrase>> calculations() {
        return Map.copyOf(calculations);
    }

    private Check<?> requireCheck() {
        if (check == null) throw new IllegalStateException("findings are made by a check only");
        return check;
    }

    private static final class Recorder implements Trace {
        private final List<Phrase> lines = new ArrayList<>();

        @Override
        public boolean isOn() {
            return true;
        }

        @Override
        public void line(String key, PhraseArg... arguments) {
            lines.add(Phrase.of(key, arguments));
        }
    }

    /** A finding in the making; ends with one of {@code met}, {@code notMet}, {@code open} and so on. */
    public final class Draft {
        private final ThingId place;
        private final @Nullable OperatingState state;
        private final Set<FactId> facts = new LinkedHashSet<>(8);
        private final List<FactId> assumptions = new ArrayList<>(0);
        private Force force = Force.REQUIRED;
        private @Nullable String limitId;
        private @Nullable Source source;
        private Finding.@Nullable Measure measure;

        private Draft(ThingId place, @Nullable OperatingState state) {
            this.place = place;
            this.state = state;
        }

        /** A fact the finding rests on. */
        public Draft on(FactId fact) {
            if (facts.add(fact) && origins.of(fact) == Origin.ASSUMED) assumptions.add(fact);
            return this;
        }

        /** Facts the finding rests on. */
        public Draft on(Iterable<FactId> more) {
            for (FactId fact : more) on(fact);
            return this;
        }

        /** The limit judged against: gives force and source. */
        public Draft by(Limit judged) {
            force = judged.force();
            limitId = judged.id();
            source = judged.source();
            return this;
        }

        /** A table value judged against; the force stays. */
        public Draft by(Source table) {
            limitId = null;
            source = table;
            return this;
        }

        /** Another force than that of the limit. */
        public Draft force(Force other) {
            force = other;
            return this;
        }

        /** The numbers compared. */
        public Draft measure(double value, double limit, Unit unit) {
            measure = new Finding.Measure(value, limit, unit);
            return this;
        }

        /**
         * The rule is kept; stays open instead where the check does not allow assumptions and there are some, be it how its
         * place is connected.
         */
        public void met(String key, PhraseArg... arguments) {
            boolean staysOpen = requireCheck().onAssumption() == Check.OnAssumption.STAYS_OPEN;
            if (staysOpen) on(assumedWiring.apply(place));
            if (staysOpen && !assumptions.isEmpty()) {
                List<Missing> missing = new ArrayList<>();
                for (FactId fact : assumptions) missing.add(new Missing.AssumedFact(fact));
                add(Outcome.OPEN, missing, Phrase.of(key, arguments));
            } else {
                add(Outcome.MET, List.of(), Phrase.of(key, arguments));
            }
        }

        /** The rule is broken. */
        public void notMet(String key, PhraseArg... arguments) {
            add(Outcome.NOT_MET, List.of(), Phrase.of(key, arguments));
        }

        /** Inside the uncertainty. */
        public void notCertain(String key, PhraseArg... arguments) {
            add(Outcome.NOT_CERTAIN, List.of(), Phrase.of(key, arguments));
        }

        /** The rule does not concern this place. */
        public void notApplicable(String key, PhraseArg... arguments) {
            add(Outcome.NOT_APPLICABLE, List.of(), Phrase.of(key, arguments));
        }

        /** Facts are missing. */
        public void openFor(List<FactId> unknown) {
            List<Missing> missing = new ArrayList<>();
            for (FactId fact : unknown) missing.add(new Missing.UnknownFact(fact));
            add(Outcome.OPEN, missing, Phrase.of("open.facts"));
        }

        /** A fact is missing. */
        public void openFor(FactId unknown) {
            openFor(List.of(unknown));
        }

        /** The rule book has no such limit, or does not cover its topic. */
        public void openForLimit(String limit) {
            add(
                    Outcome.OPEN,
                    List.of(new Missing.UnknownLimit(limit)),
                    Phrase.of("open.limit", PhraseArg.verbatim(limit)));
        }

        /** The grid operator has not answered. */
        public void openForOperator(FactId answer) {
            force = Force.OPERATOR;
            add(Outcome.OPEN, List.of(new Missing.OperatorAnswer(answer)), Phrase.of("open.operator"));
        }

        private void add(Outcome outcome, List<Missing> missing, Phrase phrase) {
            FindingKey key = new FindingKey(requireCheck().id(), place, state);
            findings.add(new Finding(
                    key,
                    outcome,
                    force,
                    measure,
                    limitId,
                    source,
                    List.copyOf(facts),
                    assumptions,
                    missing,
                    phrase,
                    null));
            if (trace.isOn()) {
                calculations.put(key, List.copyOf(recorder.lines));
                recorder.lines.clear();
            }
        }
    }
}
