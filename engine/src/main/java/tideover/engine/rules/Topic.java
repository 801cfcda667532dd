package tideover.engine.rules;

import java.util.Arrays;
import java.util.Optional;

/** What a rule book may cover. Each limit belongs to the topic whose word its id begins with. */
public enum Topic {
    POLES("poles"),
    NEUTRAL_EARTH_LINK("link"),
    SWITCH("switch"),
    NEUTRAL("neutral"),
    RCD("rcd"),
    FAULT_PROTECTION("fault"),
    OVERLOAD("overload"),
    AMPACITY("ampacity"),
    CONDUCTORS("conductor"),
    MEASURING("measuring"),
    ISOLATION("isolation"),
    BY_PASS("bypass"),
    NOTICES("notice"),
    FEEDBACK("feedback"),
    SHORT_CIRCUIT("shortCircuit"),
    VOLTAGE("voltage"),
    LOADING("loading"),
    START("start"),
    SELECTIVITY("selectivity"),
    STORAGE("storage"),
    SURGE("surge"),
    BATTERY("battery"),
    CARE("care"),
    CONTROL("control"),
    BUS("bus"),
    WIRING("wiring");

    private final String word;

    Topic(String word) {
        this.word = word;
    }

    /** First word of the limits and checks of this topic. */
    public String word() {
        return word;
    }

    /** The topic of a limit or check id such as {@code rcd.touchVoltageV}. */
    public static Optional<Topic> findByLimit(String id) {
        int dot = id.indexOf('.');
        String word = dot < 0 ? id : id.substring(0, dot);
        return Arrays.stream(values()).filter(t -> t.word.equals(word)).findFirst();
    }
}
