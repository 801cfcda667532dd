package tideover.papers.drawing;

import java.util.List;
import tideover.engine.site.Conductor;
import tideover.engine.site.LoadKind;

/**
 * Symbols after IEC 60617 (from memory). Each stands on its conductor from u = 0 to the length it returns, leads
 * included.
 */
public final class Symbols {

    /** What is marked at the fixed point of a contact. */
    public enum Mark {
        /** Circuit-breaker: a cross. */
        BREAKER,
        /** Isolating function and load switching: bar and small circle. */
        SWITCH_DISCONNECTOR,
        /** Contactor: half circle. */
        CONTACTOR,
        /** Plain contact. */
        NONE
    }

    /** Where a contact stands. */
    public enum Position {
        OPEN,
        CLOSED
    }

    public static final double CONTACT = 8;
    public static final double FUSE = 8;
    public static final double RCD = 11;
    public static final double METER = 11;

    private Symbols() {}

    /** A make contact: fixed point nearer to the grid, blade hinged behind it. */
    public static double contact(Axis axis, Mark mark, Position position) {
        double fixed = 2.2;
        double hinge = 6;
        axis.wire(0, fixed);
        axis.wire(hinge, CONTACT);
        if (position == Position.CLOSED) {
            axis.line(hinge, 0, fixed, 0);
            axis.dot(hinge, 0, 0.45);
        } else {
            axis.line(hinge, 0, fixed + 0.3, 1.7);
        }
        switch (mark) {
            case BREAKER -> {
                axis.line(fixed - 0.8, -0.8, fixed + 0.8, 0.8);
                axis.line(fixed - 0.8, 0.8, fixed + 0.8, -0.8);
            }
            case SWITCH_DISCONNECTOR -> {
                axis.line(fixed, -1.1, fixed, 1.1);
                axis.ellipse(fixed + 0.6, 0, 0.6, 0.6);
            }
            case CONTACTOR -> axis.curve(fixed, 0.9, fixed - 1.2, 0.9, fixed - 1.2, -0.9, fixed, -0.9);
            case NONE -> axis.dot(fixed, 0, 0.45);
        }
        return CONTACT;
    }

    /** A break contact, at rest: closed, its blade reaching past the fixed point. */
    public static double breakContact(Axis axis) {
        double fixed = 2.2;
        double hinge = 6;
        axis.wire(0, fixed);
        axis.wire(hinge, CONTACT);
        axis.line(hinge, 0, fixed - 0.7, 1.3);
        axis.line(fixed, 0, fixed, 1.5);
        return CONTACT;
    }

    /** A coil: a rectangle across the conductor. */
    public static double coil(Axis axis) {
        axis.wire(0, 2.6);
        axis.line(2.6, -2.2, 5.4, -2.2, 5.4, 2.2, 2.6, 2.2, 2.6, -2.2);
        axis.wire(5.4, CONTACT);
        return CONTACT;
    }

    /** A rectangle with the conductor through its long axis. */
    public static double fuse(Axis axis) {
        axis.wire(0, FUSE);
        axis.line(1.3, -1, 6.7, -1, 6.7, 1, 1.3, 1, 1.3, -1);
        return FUSE;
    }

    /** A contact released by the current through the ring around all live conductors. */
    public static double rcd(Axis axis, Position position) {
        contact(axis, Mark.SWITCH_DISCONNECTOR, position);
        axis.wire(CONTACT, RCD);
        axis.ellipse(9, 0, 0.75, 1.6);
        axis.line(9, 1.6, 9, 2.6, 4.3, 2.6, 4.3, position == Position.CLOSED ? 0 : 0.8);
        return RCD;
    }

    /** The ring of a residual current device that shares the contact before it. */
    public static double residualRing(Axis axis) {
        axis.wire(0, 3.4);
        axis.ellipse(1.4, 0, 0.75, 1.6);
        return 3.4;
    }

    /** A meter of energy. */
    public static double meter(Axis axis) {
        axis.wire(0, 1.5);
        axis.wire(9.5, METER);
        axis.line(1.5, -2.6, 9.5, -2.6, 9.5, 3.4, 1.5, 3.4, 1.5, -2.6);
        axis.line(1.5, 2, 9.5, 2);
        axis.text(5.5, -0.4, Type.SIZE, "Wh");
        return METER;
    }

    /** Square cut by a diagonal: direct current on the side of the modules, alternating on the other. */
    public static double inverter(Axis axis) {
        double a = 9;
        axis.line(0, -a / 2, a, -a / 2, a, a / 2, 0, a / 2, 0, -a / 2);
        axis.line(0, -a / 2, a, a / 2);
        axis.line(1.2, 2.6, 3.9, 2.6);
        axis.line(1.2, 1.8, 3.9, 1.8);
        tilde(axis, 6.3, -2.2, 1.3);
        return a;
    }

    public static void tilde(Axis axis, double u, double v, double r) {
        axis.curve(
                u - r,
                v - 0.3 * r,
                u - 0.6 * r,
                v + r,
                u - 0.3 * r,
                v + r,
                u,
                v,
                u + 0.3 * r,
                v - r,
                u + 0.6 * r,
                v - r,
                u + r,
                v + 0.3 * r);
    }

    /** Long and thin, short and thick, twice; its conductor begins behind it. */
    public static double battery(Axis axis) {
        for (double u : new double[] {0.5, 3.3}) {
            axis.line(u, -2.6, u, 2.6);
            axis.area(u + 1.1, -1.4, u + 1.6, -1.4, u + 1.6, 1.4, u + 1.1, 1.4);
        }
        axis.wire(4.9, 7);
        return 7;
    }

    /** A module under two rays of light; its conductor begins behind it. */
    public static double photovoltaic(Axis axis) {
        axis.line(0, -2, 5.5, -2, 5.5, 2, 0, 2, 0, -2);
        axis.line(0, 2, 1.8, 0, 0, -2);
        for (double u : new double[] {1.7, 3.7}) {
            axis.line(u - 1.2, 4.6, u, 2.6);
            axis.area(u, 2.5, u - 0.8, 3.1, u - 0.1, 3.5);
        }
        axis.wire(5.5, 7);
        return 7;
    }

    /** Three shortening strokes across the end of the conductor. */
    public static double earth(Axis axis) {
        axis.wire(0, 3);
        axis.line(3, -2, 3, 2);
        axis.line(3.8, -1.3, 3.8, 1.3);
        axis.line(4.6, -0.6, 4.6, 0.6);
        return 5;
    }

    /** An arrow head: the network feeds from here. */
    public static double network(Axis axis) {
        axis.ellipse(3, 0, 3, 3);
        tilde(axis, 3, 0, 1.7);
        axis.wire(6, 8);
        return 8;
    }

    /** Strokes that say which conductors run in one line: plain for a line, dot for N, bar for PE, both for PEN. */
    public static double strokes(Axis axis, List<Conductor> conductors) {
        double u = 1;
        for (Conductor conductor : conductors) {
            axis.line(u - 0.5, -1.2, u + 0.7, 1.4);
            if (conductor.isNeutral()) axis.dot(u + 0.7, 1.4, 0.5);
            if (conductor.isProtective()) axis.line(u, 1.4, u + 1.4, 1.4);
            u += conductor.isLine() ? 1.2 : 1.7;
        }
        double length = Math.max(u, 1) + 0.6;
        axis.wire(0, length);
        return length;
    }

    /** What a circuit feeds, at the end of its conductor; 5.5 mm long. */
    public static double load(Axis axis, LoadKind kind) {
        switch (kind) {
            case SOCKETS -> {
                axis.wire(0, 2.6);
                axis.curve(4.4, 1.9, 1.9, 1.9, 1.9, -1.9, 4.4, -1.9);
                axis.line(2.55, 1.5, 2.55, -1.5);
            }
            case LIGHTING -> {
                axis.wire(0, 1.2);
                axis.ellipse(3.1, 0, 1.9, 1.9);
                axis.line(1.76, -1.34, 4.44, 1.34);
                axis.line(1.76, 1.34, 4.44, -1.34);
            }
            case PUMP, MOTOR, VENTILATION -> {
                axis.wire(0, 1);
                axis.ellipse(3.2, 0, 2.2, 2.2);
                axis.text(3.2, 0, Type.SIZE, "M");
            }
            case COOKING, WATER_HEATER, SAUNA -> {
                axis.wire(0, 1);
                axis.line(1, -1.4, 5.5, -1.4, 5.5, 1.4, 1, 1.4, 1, -1.4);
                for (double u : new double[] {2.1, 3.25, 4.4}) axis.line(u, -1.4, u, 1.4);
            }
            case SUB_SUPPLY -> {
                axis.wire(0, 5);
                axis.area(5.5, 0, 3.5, 1, 3.5, -1);
            }
            case FIXED, HEAT_PUMP, CAR_CHARGER, CONTROL, MEDICAL -> {
                axis.wire(0, 1.2);
                axis.line(1.2, -1.7, 5, -1.7, 5, 1.7, 1.2, 1.7, 1.2, -1.7);
                if (kind == LoadKind.HEAT_PUMP) {
                    axis.ellipse(3.1, 0, 1.2, 1.2);
                    axis.line(1.9, 0, 3.7, 1.05);
                    axis.line(1.9, 0, 3.7, -1.05);
                }
                if (kind == LoadKind.CAR_CHARGER)
                    axis.area(3.4, 1.3, 2.2, -0.2, 3.1, -0.2, 2.8, -1.3, 4, 0.2, 3.1, 0.2);
                if (kind == LoadKind.CONTROL) axis.line(2, -0.8, 2.8, 0.8, 3.4, -0.8, 4.2, 0.8);
            }
        }
        return 5.5;
    }
}
