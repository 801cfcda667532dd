package tideover.engine.site;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of thing a site lists, with the name of their section in files, forms and addresses. */
public enum ThingKind {
    METER("meters", Meter.class),
    PROTECTIVE_DEVICE("protectiveDevices", ProtectiveDevice.class),
    ISLANDING_SWITCH("islandingSwitches", IslandingSwitch.class),
    NEUTRAL_EARTH_SWITCH("neutralEarthSwitches", NeutralEarthSwitch.class),
    NEUTRAL_EARTH_LINK("neutralEarthLinks", NeutralEarthLink.class),
    ELECTRODE("electrodes", Electrode.class),
    BY_PASS("byPasses", ByPass.class),
    BOARD("boards", Board.class),
    RCD_GROUP("rcdGroups", RcdGroup.class),
    CIRCUIT("circuits", Circuit.class),
    INVERTER("inverters", Inverter.class),
    BATTERY("batteries", Battery.class),
    PV_ARRAY("pvArrays", PvArray.class),
    ISOLATOR("isolators", Isolator.class),
    NOTICE("notices", Notice.class),
    POWER_TERMINALS("powerTerminals", PowerTerminals.class),
    CONTROL_PORT("controlPorts", ControlPort.class),
    BUS_PORT("busPorts", BusPort.class),
    CONTROL_CABLE("controlCables", ControlCable.class),
    ISLAND_SETTINGS("islandSettings", IslandSettings.class),
    NAMEPLATE("nameplates", Nameplate.class);

    private final String section;
    private final Class<? extends Thing> type;

    ThingKind(String section, Class<? extends Thing> type) {
        this.section = section;
        this.type = type;
    }

    /** Name of the list in a site file. */
    public String section() {
        return section;
    }

    /** The record that holds such a thing. */
    public Class<? extends Thing> type() {
        return type;
    }

    /** The kind whose list bears this name. */
    public static Optional<ThingKind> findBySection(String section) {
        return Arrays.stream(values()).filter(k -> k.section.equals(section)).findFirst();
    }

    /** The kind of a listed thing. */
    public static ThingKind of(Thing thing) {
        for (ThingKind kind : values()) if (kind.type.isInstance(thing)) return kind;
        throw new IllegalArgumentException(thing.id() + " is not in a list");
    }

    /** The section of any thing: that of its kind, or {@code place}, {@code gridOperator}, {@code supply}. */
    public static String sectionOf(Thing thing) {
        if (thing instanceof Place) return "place";
        if (thing instanceof GridOperator) return "gridOperator";
        if (thing instanceof Supply) return "supply";
        return of(thing).section;
    }
}
