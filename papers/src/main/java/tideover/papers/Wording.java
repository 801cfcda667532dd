package tideover.papers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.Verdict;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Missing;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.PhraseArg.Amount;
import tideover.engine.rules.Source;
import tideover.engine.rules.Unit;
import tideover.engine.site.FactId;
import tideover.engine.site.FactSource;
import tideover.engine.site.FieldWords;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;

/**
 * Words what the engine found: the same sentence on screen, command line and paper.
 *
 * <p>Immutable and safe for use by several threads. {@link #of(Locale, FieldWords)} names things by their id;
 * {@link #with(Installation)} gives a copy that knows their printed names.
 */
public final class Wording {

    private final Locale locale;
    private final FieldWords fields;
    private final Bundle bundle;
    private final Amounts amounts;
    private final @Nullable Installation installation;
    private final Map<ThingId, String> names;

    private Wording(
            Locale locale,
            FieldWords fields,
            Bundle bundle,
            @Nullable Installation installation,
            Map<ThingId, String> names) {
        this.locale = locale;
        this.fields = fields;
        this.bundle = bundle;
        this.amounts = new Amounts(locale);
        this.installation = installation;
        this.names = names;
    }

    /**
     * The wording of one language; what is not translated appears in English.
     *
     * @param fields what facts are called
     */
    public static Wording of(Locale locale, FieldWords fields) {
        return new Wording(locale, fields, Bundle.of(locale), null, Map.of());
    }

    /** A copy that names things by their designations; where several bear one, the id stands behind it. */
    public Wording with(Installation site) {
        Set<String> seen = new HashSet<>();
        Set<String> several = new HashSet<>();
        Map<ThingId, String> printed = new HashMap<>();
        for (Thing thing : site.things()) {
            String designation = thing.designation();
            if (designation != null && !seen.add(designation)) several.add(designation);
        }
        for (Thing thing : site.things()) {
            String designation = thing.designation();
            if (designation == null) continue;
            boolean alone = !several.contains(designation);
            printed.put(
                    thing.id(),
                    alone
                            ? designation
                            : text("name.ambiguous", designation, thing.id().text()));
        }
        for (ThingId id : List.of(ThingId.SUPPLY, ThingId.GRID_OPERATOR, ThingId.PLACE)) {
            String designation = site.find(id).map(Thing::designation).orElse(null);
            if (designation != null) printed.put(id, designation);
        }
        return new Wording(locale, fields, bundle, site, printed);
    }

    /** The language of the sentences. */
    public Locale locale() {
        return locale;
    }

    /**
     * A phrase as a sentence. A key without text, which a test refuses, is printed with its arguments rather than lost.
     * Amounts of one unit that differ are printed with as many figures as it takes to tell them apart.
     */
    public String of(Phrase phrase) {
        List<PhraseArg> arguments = phrase.arguments();
        Object[] filled = new Object[arguments.size()];
        int figures = figures(arguments);
        for (int i = 0; i < filled.length; i++) filled[i] = argument(arguments.get(i), figures);
        String pattern = bundle.find(phrase.key()).orElse(null);
        if (pattern == null) return phrase.key() + (filled.length == 0 ? "" : " " + List.of(filled));
        return bundle.filled(pattern, filled);
    }

    /** What came of a check as sentences; for an open finding also what it waits for. */
    public String of(Finding finding) {
        String sentence = of(finding.phrase());
        if (finding.outcome() != Outcome.OPEN) return sentence;
        List<FactId> unknown = new ArrayList<>();
        List<FactId> assumed = new ArrayList<>();
        List<FactId> operator = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        for (Missing missing : finding.missing()) {
            if (missing instanceof Missing.UnknownFact m) unknown.add(m.fact());
            if (missing instanceof Missing.AssumedFact m) assumed.add(m.fact());
            if (missing instanceof Missing.OperatorAnswer m) operator.add(m.fact());
            if (missing instanceof Missing.UnknownLimit m) parts.add(text("finding.limit", m.limit()));
        }
        if (!unknown.isEmpty()) parts.add(text("finding.unknown", facts(unknown)));
        if (!operator.isEmpty()) parts.add(text("finding.operator", facts(operator)));
        if (!assumed.isEmpty()) parts.add(text("finding.assumed", facts(assumed), sentence));
        return String.join(" ", parts);
    }

    /** The verdict of an assessment in one sentence. */
    public String of(Verdict verdict) {
        return text("verdict." + verdict.outcome().name());
    }

    /** How many findings a verdict sums up: met, not met, open; on assumptions, on limits not compared. */
    public String counts(Verdict verdict) {
        Map<Outcome, Integer> counts = verdict.counts();
        return text(
                "verdict.counts",
                PhraseArg.count(counts.getOrDefault(Outcome.MET, 0)),
                PhraseArg.count(counts.getOrDefault(Outcome.NOT_MET, 0)),
                PhraseArg.count(counts.getOrDefault(Outcome.OPEN, 0) + counts.getOrDefault(Outcome.NOT_CERTAIN, 0)),
                PhraseArg.count(verdict.onAssumptions()),
                PhraseArg.count(verdict.onUncompared()));
    }

    /** A value against its limit, with as many figures as it takes to tell them apart. */
    public String of(Finding.Measure measure) {
        PhraseArg value = PhraseArg.amount(measure.value(), measure.unit());
        PhraseArg limit = PhraseArg.amount(measure.limit(), measure.unit());
        return text("measure", value, limit);
    }

    /** Document, clause and how far the limit was compared with it. */
    public String of(Source source) {
        String verification = word(source.verification());
        return source.clause().isEmpty()
                ? text("source.whole", source.document(), verification)
                : text("source.clause", source.document(), source.clause(), verification);
    }

    /** The word for an outcome, a state, a force or any other constant of the trade, as inside a sentence. */
    public String word(Enum<?> word) {
        String key = word.getDeclaringClass().getSimpleName() + "." + word.name();
        return bundle.find(key).map(bundle::filled).orElse(key);
    }

    /** The same word at the beginning of a line. */
    public String heading(Enum<?> word) {
        return capitalised(word(word));
    }

    /** Sign and word of an outcome, such as "✕ Not met". */
    public String outcome(Outcome outcome) {
        return sign(outcome) + " " + heading(outcome);
    }

    /** The sign of an outcome alone. */
    public String sign(Outcome outcome) {
        return text("Outcome." + outcome.name() + ".sign");
    }

    /** The printed name of a thing, or its id. */
    public String name(ThingId thing) {
        String name = names.get(thing);
        if (name != null) return name;
        return bundle.find("thing." + thing.text()).map(bundle::filled).orElse(thing.text());
    }

    /** The printed names of several things: "a, b and c". */
    public String names(List<ThingId> things) {
        return joined(things.stream().map(this::name).toList());
    }

    /** What a fact is called, and of which thing. */
    public String fact(FactId fact) {
        return text("fact.of", field(fact), name(fact.thing()));
    }

    /** What a fact is called, without its thing; its field where the thing is not known. */
    public String field(FactId fact) {
        Optional<Thing> thing = installation == null ? Optional.empty() : installation.find(fact.thing());
        return thing.map(t -> fields.words(ThingKind.sectionOf(t), fact.field()))
                .orElse(fact.field());
    }

    /** How one gets a fact. */
    public FactSource source(FactId fact) {
        Thing thing =
                installation == null ? null : installation.find(fact.thing()).orElse(null);
        return thing == null ? FactSource.LOOK : fields.source(ThingKind.sectionOf(thing), fact.field());
    }

    private String facts(List<FactId> facts) {
        return joined(facts.stream().map(this::fact).distinct().toList());
    }

    /** A quantity with trade rounding and unit, such as "30 mA"; infinity is "never" or "without limit". */
    public String amount(double value, Unit unit) {
        return amount(value, unit, Amounts.FIGURES);
    }

    /** A sentence of the bundles with quantities, names and words filled in. */
    public String text(String key, PhraseArg... arguments) {
        return of(Phrase.of(key, arguments));
    }

    /** A sentence of the bundles with texts filled in. */
    public String text(String key, String... texts) {
        PhraseArg[] arguments = new PhraseArg[texts.length];
        for (int i = 0; i < texts.length; i++) arguments[i] = PhraseArg.verbatim(texts[i]);
        return of(Phrase.of(key, arguments));
    }

    /** A sentence of the bundles as it stands. */
    public String text(String key) {
        return of(Phrase.of(key));
    }

    /**
     * A sentence about a file with the place before it, where it does not begin with that file itself.
     *
     * @param file   empty where it is about none
     * @param line   from 1; 0 for the file as a whole
     * @param column from 1
     */
    public String at(String file, long line, long column, String sentence) {
        if (file.isEmpty() || line == 0 && sentence.startsWith(file)) return sentence;
        return line == 0
                ? text("problem.inFile", file, sentence)
                : text("problem.atLine", file, String.valueOf(line), String.valueOf(column), sentence);
    }

    /** "a, b and c". */
    public String joined(List<String> parts) {
        if (parts.isEmpty()) return "–";
        String joined = parts.get(0);
        for (int i = 1; i < parts.size(); i++)
            joined = text(i == parts.size() - 1 ? "list.and" : "list.comma", joined, parts.get(i));
        return joined;
    }

    /** The same text with a capital first letter. */
    public String capitalised(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(locale) + text.substring(1);
    }

    /** What is filled into a place. A number of things stays a number, so that a text can choose between one and many. */
    private Object argument(PhraseArg argument, int figures) {
        if (argument instanceof Amount a)
            return a.unit() == Unit.COUNT ? (Object) Math.round(a.value()) : amount(a.value(), a.unit(), figures);
        if (argument instanceof PhraseArg.Name n) return name(n.thing());
        if (argument instanceof PhraseArg.Names n) return names(n.things());
        if (argument instanceof PhraseArg.FactName f) return fact(f.fact());
        if (argument instanceof PhraseArg.Word w) return word(w.word());
        return ((PhraseArg.Verbatim) argument).text();
    }

    private String amount(double value, Unit unit, int figures) {
        if (Double.isInfinite(value)) return text(unit == Unit.S ? "amount.never" : "amount.unlimited");
        return amounts.of(value, unit, figures);
    }

    /** Enough figures to tell apart all amounts of one unit that differ. */
    private int figures(List<PhraseArg> arguments) {
        int figures = Amounts.FIGURES;
        for (PhraseArg one : arguments)
            for (PhraseArg other : arguments)
                if (one instanceof Amount a
                        && other instanceof Amount b
                        && a.unit() == b.unit()
                        && a.value() < b.value())
                    while (figures < Amounts.MOST_FIGURES
                            && amount(a.value(), a.unit(), figures).equals(amount(b.value(), b.unit(), figures)))
                        figures++;
        return figures;
    }
}
