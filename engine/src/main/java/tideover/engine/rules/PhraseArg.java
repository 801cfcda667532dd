package tideover.engine.rules;

import java.util.List;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;

/** What is filled into a phrase: typed, so that one renderer words, rounds and translates it. */
public sealed interface PhraseArg {

    /** A quantity; infinity is worded as never. */
    record Amount(double value, Unit unit) implements PhraseArg {}

    /** The printed name of a thing. */
    record Name(ThingId thing) implements PhraseArg {}

    /** The printed names of several things. */
    record Names(List<ThingId> things) implements PhraseArg {
        public Names {
            things = List.copyOf(things);
        }
    }

    /** What a fact is called, and of which thing. */
    record FactName(FactId fact) implements PhraseArg {}

    /** A word of the trade that the bundle translates. */
    record Word(Enum<?> word) implements PhraseArg {}

    /** Text printed as it is: a terminal, a document. */
    record Verbatim(String text) implements PhraseArg {}

    static PhraseArg amount(double value, Unit unit) {
        return new Amount(value, unit);
    }

    static PhraseArg count(int value) {
        return new Amount(value, Unit.COUNT);
    }

    static PhraseArg name(ThingId thing) {
        return new Name(thing);
    }

    static PhraseArg names(List<ThingId> things) {
        return new Names(things);
    }

    static PhraseArg word(Enum<?> word) {
        return new Word(word);
    }

    static PhraseArg verbatim(String text) {
        return new Verbatim(text);
    }
}
