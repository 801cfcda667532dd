package tideover.engine.wiring.model;

import java.util.List;
import tideover.engine.site.ThingId;

/** One thing that can be read in a run. Two readings with one id are the same reading. */
public final class Reading {

    private final ReadingKind kind;
    private final ThingId place;
    private final String detail;
    private final Probe probe;
    private final List<Integer> terminals;

    /** How the model reads it. */
    interface Probe {
        Shown read(Machine machine);
    }

    Reading(ReadingKind kind, ThingId place, String detail, Probe probe) {
        this(kind, place, detail, List.of(), probe);
    }

    /** @param terminals nodes on whose potentials it depends and, but for earthing, on nothing else */
    Reading(ReadingKind kind, ThingId place, String detail, List<Integer> terminals, Probe probe) {
        this.terminals = List.copyOf(terminals);
        this.kind = kind;
        this.place = place;
        this.detail = detail;
        this.probe = probe;
    }

    /** What is read. */
    public ReadingKind kind() {
        return kind;
    }

    /** Thing or port at which it is read. */
    public ThingId place() {
        return place;
    }

    /** Terminals or conductors, in the words printed on them; empty where the place says it all. */
    public String detail() {
        return detail;
    }

    /** Lasting name, such as {@code voltage:main-board:L1-N}. */
    public String id() {
        String word = Ids.of(kind);
        return word + ":" + place + (detail.isEmpty() ? "" : ":" + detail.replace(' ', '-'));
    }

    /** What it shows in a run as it stands. */
    public Shown read(Machine machine) {
        return probe.read(machine);
    }

    /** Nodes on whose potentials it depends and, but for how sources are earthed, on nothing else; empty: on more. */
    public List<Integer> terminals() {
        return terminals;
    }

    /** Whether it depends on nothing but lines, neutrals and earth as they stand. */
    public boolean isOfPower() {
        return switch (kind) {
            case VOLTAGE, METER, ROTATION, LOAD, RCD_TEST, EARTH_CURRENT, CONTINUITY -> true;
            case MODE,
                    CONTACT,
                    COIL,
                    POSITION,
                    INPUT,
                    OUTPUT,
                    BUS,
                    SETTING,
                    LINK_SEEN,
                    CONTROL_VOLTAGE,
                    CORE_CONTINUITY,
                    BUS_RESISTANCE -> false;
        };
    }

    @Override
    public String toString() {
        return id();
    }
}
