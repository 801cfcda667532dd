package tideover.engine.wiring.schedule;

import tideover.engine.wiring.colour.ConductorColours;

/** Tables of the standards that the wiring lists are made with. */
public record WiringTables(ConductorColours colours, FerruleTable ferrules) {}
