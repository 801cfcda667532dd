package tideover.web.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.installation.Installation;
import tideover.engine.protection.FaultCourse;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.ThingId;
import tideover.papers.FaultRanking;
import tideover.papers.FaultWording;
import tideover.papers.Wording;
import tideover.web.network.NetworkSheet.FaultRow;

/** Faults as a table and as stories. */
final class FaultRows {
    private final Wording words;
    private final FaultWording faults;
    private final String state;
    private final String address;

    /**
     * @param address of the page about the network
     * @param state   as addresses write it
     */
    FaultRows(Installation installation, Wording words, String address, String state) {
        this.words = words;
        this.faults = new FaultWording(words, installation);
        this.address = address;
        this.state = state;
    }

    /** The worst of all, told why they are. */
    List<String> worst(List<FaultCourse> courses) {
        List<String> stories = new ArrayList<>();
        FaultRanking.worst(courses)
                .forEach((key, course) ->
                        stories.add(words.text("network.worst", words.text(key), faults.story(course))));
        return stories;
    }

    /** Each fault at both extremes. */
    List<String> stories(List<FaultCourse> courses) {
        List<String> stories = new ArrayList<>();
        for (FaultRanking.Pair pair : FaultRanking.pairs(courses)) {
            stories.add(words.capitalised(faults.story(pair.smallest())));
            stories.add(words.capitalised(faults.story(pair.largest())));
        }
        return stories;
    }

    List<FaultRow> table(List<FaultCourse> courses) {
        List<FaultRow> rows = new ArrayList<>();
        ThingId before = ThingId.PLACE;
        for (FaultRanking.Pair pair : FaultRanking.pairs(courses)) {
            FaultCourse smallest = pair.smallest();
            ThingId place = smallest.place();
            rows.add(new FaultRow(
                    place.equals(before) ? "" : words.name(place),
                    placeAddress(place),
                    faults.between(smallest),
                    words.amount(smallest.currentA(), Unit.A),
                    words.amount(pair.largest().currentA(), Unit.A),
                    String.format(locale(), "%.1f", smallest.touchVoltageV()),
                    faults.ends(smallest.clearing())));
            before = place;
        }
        return rows;
    }

    String placeAddress(ThingId place) {
        return address + "/" + place + "?state=" + state;
    }

    private Locale locale() {
        return words.locale();
    }

    /** How many there are. */
    String counted(List<FaultRow> rows) {
        return words.text("network.faults.all", PhraseArg.count(rows.size()));
    }
}
