package tideover.engine.wiring.model;

import java.util.Arrays;
import java.util.List;
import tideover.engine.site.BusPort;
import tideover.engine.site.ByPass;
import tideover.engine.site.ByPassKind;
import tideover.engine.site.ControlPort;
import tideover.engine.site.MainContacts;
import tideover.engine.site.SignalMeaning;
import tideover.engine.wiring.model.Device.Drive;
import tideover.engine.wiring.model.Device.Role;
import tideover.engine.wiring.net.Edit;
import tideover.engine.wiring.net.Nets;
import tideover.engine.wiring.net.Potential;
import tideover.engine.wiring.net.Potential.System;
import tideover.engine.wiring.net.SwitchingNet;

/**
 * One run of the model: time passes from event to event. An event is a main contact that arrives, or a time of the inverter
 * that has run out. Between two events everything that needs no time has settled. For one thread.
 */
public final class Machine {

    /** Events after which a run that never comes to rest is given up. */
    private static final int MOST_EVENTS = 60;
    /** Changes without time after which it chatters. */
    private static final int MOST_ROUNDS = 24;

    private static final double NEVER = Double.POSITIVE_INFINITY;

    private final HouseModel model;
    private final ControlModel control;
    private final Defect defect;
    private final Senses senses;
    private final NetsCache power;
    private final ControlCache controls;
    private final int suppliesLost;
    private final long heldClosed;
    private final long heldOpen;
    private final long unmoved;
    private final long[] tripped;

    private final boolean[] closed;
    private final double[] moving;
    private Surroundings surroundings = Surroundings.NOTHING;
    private Phase phase = Phase.DARK;
    private double left = NEVER;
    private boolean mainFuse = true;
    private boolean unsettled;
    private boolean outOfStep;
    private long outputsOn;
    private Nets nets;
    private long gates;
    private ControlCache.Solution solution;

    Machine(HouseModel model, Defect defect) {
        this.model = model;
        this.control = model.control();
        this.defect = defect;
        this.power = defect.power().isNone()
                ? model.healthy()
                : new NetsCache(model.power().with(defect.power()));
        this.controls = defect.control().isNone()
                ? model.healthyControl()
                : new ControlCache(control, control.net().with(defect.control()));
        this.senses = model.senses();
        long close = 0;
        long open = 0;
        long stuck = 0;
        int lost = 0;
        for (Failure failure : defect.failures()) {
            int device = model.device(failure.device());
            if (failure instanceof Failure.Welded welded) close |= gate(device, welded.pole());
            else if (failure instanceof Failure.Interrupted interrupted) open |= gate(device, interrupted.pole());
            else if (failure instanceof Failure.Unmoved) stuck |= 1L << device;
            else lost |= supply(failure);
        }
        heldClosed = close;
        heldOpen = open;
        unmoved = stuck;
        suppliesLost = lost;
        tripped = model.power().nothingTripped();
        closed = new boolean[model.devices().size()];
        moving = new double[closed.length];
        Arrays.fill(moving, NEVER);
        for (int d = 0; d < closed.length; d++)
            closed[d] = model.devices().get(d).restsClosed();
        nets = solvePower();
        solution = controls.solve(ControlModel.always(), 0);
    }

    /** A copy that goes its own way. */
    private Machine(Machine other) {
        model = other.model;
        control = other.control;
        defect = other.defect;
        senses = other.senses;
        power = other.power;
        controls = other.controls;
        solution = other.solution;
        suppliesLost = other.suppliesLost;
        heldClosed = other.heldClosed;
        heldOpen = other.heldOpen;
        unmoved = other.unmoved;
        tripped = other.tripped.clone();
        closed = other.closed.clone();
        moving = other.moving.clone();
        surroundings = other.surroundings;
        phase = other.phase;
        left = other.left;
        mainFuse = other.mainFuse;
        unsettled = other.unsettled;
        outputsOn = other.outputsOn;
        nets = other.nets;
        gates = other.gates;
    }

    /** A copy that stays as it stands, or goes its own way. */
    public Machine fork() {
        return new Machine(this);
    }

    private long gate(int device, int pole) {
        return 1L << model.devices().get(device).poles[pole];
    }

    private int supply(Failure failure) {
        for (int i = 0; i < control.supplies().size(); i++)
            if (control.supplies().get(i).port().id().equals(failure.device()))
                return 1 << ControlModel.plusBit(i) | 1 << ControlModel.minusBit(i);
        throw new IllegalArgumentException(failure.device() + " gives no supply");
    }

    /** Who is told how long each condition lasts. */
    interface Watcher {
        /** Told once for each time between two events; it is infinite where the run came to rest. */
        void during(Machine machine, double seconds);
    }

    /** Where a run stops. */
    public enum Until {
        /** At rest; the observation of the grid is waited out. */
        AT_REST,
        /** At rest, or while the inverter observes the grid. */
        OBSERVING
    }

    /** Lets the surroundings change and runs on. */
    public void run(Surroundings changed, Until until) {
        run(changed, until, (machine, seconds) -> {});
    }

    void run(Surroundings changed, Until until, Watcher watcher) {
        surrounded(changed);
        for (int event = 0; event < MOST_EVENTS; event++) {
            double next = nextEvent();
            if (next == NEVER || until == Until.OBSERVING && isOnlyObserving()) {
                watcher.during(this, NEVER);
                return;
            }
            watcher.during(this, next);
            pass(next);
        }
        unsettled = true;
    }

    /** Lets the surroundings change; what needs no time happens at once. */
    void surrounded(Surroundings changed) {
        outOfStep = false;
        surroundings = changed;
        if (changed.reset() && phase == Phase.LOCKED) enter(Phase.STOPPED);
        settle();
    }

    /** Time until the next event; infinite at rest. */
    double nextEvent() {
        double next = left;
        for (double each : moving) next = Math.min(next, each);
        return next;
    }

    private boolean isOnlyObserving() {
        if (phase != Phase.OBSERVING) return false;
        for (double each : moving) if (each != NEVER) return false;
        return true;
    }

    /** Lets time pass up to the next event and has that happen. */
    void pass(double seconds) {
        outOfStep = false;
        boolean isOver = left <= seconds;
        left -= seconds;
        for (int d = 0; d < moving.length; d++) {
            moving[d] -= seconds;
            if (moving[d] > 0) continue;
            moving[d] = NEVER;
            closed[d] = !closed[d];
        }
        if (isOver) enter(timedOut());
        settle();
    }

    private Phase timedOut() {
        return switch (phase) {
            case LOSING -> Phase.SEPARATING;
            case STARTING -> Phase.FORMING;
            case OBSERVING -> Phase.UNLINKING;
            case SEPARATING, EARTHING, UNLINKING, CLOSING -> Phase.LOCKED;
            case DARK, FOLLOWING, FORMING, LOCKED, STOPPED -> phase;
        };
    }

    private void enter(Phase next) {
        phase = next;
        Timing timing = model.timing();
        left = switch (next) {
            case LOSING -> timing.lossTimeS();
            case SEPARATING, EARTHING, UNLINKING, CLOSING -> timing.feedbackTimeS();
            case STARTING -> timing.formingTimeS();
            case OBSERVING -> timing.observationTimeS();
            case DARK, FOLLOWING, FORMING, LOCKED, STOPPED -> NEVER;
        };
    }

    /** All that needs no time, again and again until nothing changes. */
    private void settle() {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            nets = solvePower();
            solveControl();
            move();
            Phase next = next();
            if (next == phase) return;
            enter(next);
        }
        unsettled = true;
    }

    private Nets solvePower() {
        hold();
        gates = gates();
        Nets found = power.solve(gates, live(), tripped);
        // A short-circuit trips what lies next before it, then what lies before that, at last the main fuse.
        while ((found.clashes() & Nets.Clash.GRID) != 0) {
            int owner = protection(found);
            if (owner >= 0) tripped[owner >> 6] |= 1L << owner;
            else mainFuse = false;
            found = power.solve(gates, live(), tripped);
        }
        return found;
    }

    /** What a person moves by hand. */
    private void hold() {
        List<Device> devices = model.devices();
        boolean isHeld = surroundings.byHand() != Surroundings.ByHand.NOTHING;
        for (int d = 0; d < closed.length; d++) {
            Role role = devices.get(d).role;
            if (role == Role.BY_PASS) closed[d] = surroundings.byPassed();
            else if (isHeld && role == Role.SWITCH)
                closed[d] = surroundings.byHand() == Surroundings.ByHand.SWITCH_CLOSED;
            else if (isHeld && role == Role.LINK) closed[d] = surroundings.byHand() == Surroundings.ByHand.LINK_CLOSED;
        }
    }

    private int protection(Nets found) {
        for (Edit.Change change : defect.power().changes()) {
            int[] places = change instanceof Edit.Joined joined
                    ? new int[] {joined.nodeA(), joined.nodeB()}
                    : change instanceof Edit.Moved moved ? new int[] {moved.node(), far(moved)} : new int[0];
            for (int place : places) {
                if (!isClashing(found.potentials(place))) continue;
                int owner = found.findProtection(place, System.GRID);
                if (owner >= 0) return owner;
            }
        }
        return -1;
    }

    private int far(Edit.Moved moved) {
        Edit.End far = moved.end() == Edit.End.FROM ? Edit.End.TO : Edit.End.FROM;
        return model.power().joints().node(moved.joint(), far);
    }

    private static boolean isClashing(int potentials) {
        int grid = System.GRID.of(potentials);
        return (grid & grid - 1) != 0 || (grid & 7) != 0 && (potentials & Potential.EARTH) != 0;
    }

    private long gates() {
        long all = 0;
        if (surroundings.breakersOn()) all |= 1L << HouseModel.BREAKERS;
        if (surroundings.rcdsOn()) all |= 1L << HouseModel.RCDS;
        if (surroundings.invertersOn()) all |= 1L << HouseModel.INVERTERS;
        List<Device> devices = model.devices();
        for (int d = 0; d < closed.length; d++)
            if (closed[d]) all |= devices.get(d).gates();
        return (all | heldClosed) & ~heldOpen;
    }

    int live() {
        int live = surroundings.gridLines() && mainFuse ? Potential.GRID_LINES : 0;
        if (surroundings.gridNeutral()) live |= Potential.GRID_N;
        if (phase.isForming()) live |= Potential.ISLAND_LINES | Potential.ISLAND_N;
        return live;
    }

    private void solveControl() {
        outputsOn = outputs();
        int live = senses.supplies(this) & ~suppliesLost;
        solution = controls.solve(controlGates(), live);
    }

    private long controlGates() {
        long all = ControlModel.always() | outputsOn;
        for (int d = 0; d < closed.length; d++)
            for (MainContacts when : MainContacts.values())
                if (isReported(d, when)) all |= 1L << ControlModel.reportGate(d, when);
        return all;
    }

    /** Whether the auxiliary contacts of a device that are closed while its main contacts are so are closed. */
    boolean isReported(int device, MainContacts when) {
        if (when == MainContacts.CLOSED) return closed[device];
        Device reporting = model.devices().get(device);
        boolean isMechanismOpen = !closed[device];
        if (!reporting.isMirrored || reporting.poles.length == 0) return isMechanismOpen;
        return isMechanismOpen && areAllOpen(device);
    }

    private long outputs() {
        long on = 0;
        for (int i = 0; i < control.outputs().size(); i++) {
            ControlPort port = control.outputs().get(i);
            SignalMeaning meaning = senses.meaning(this, port);
            if (meaning == null) continue;
            int device = control.deviceOf(i);
            if (device >= 0 ? reports(device, meaning) : requests(meaning)) on |= 1L << control.outputGate(i);
        }
        return on;
    }

    private boolean reports(int device, SignalMeaning meaning) {
        return switch (meaning) {
            case SWITCH_CLOSED, LINK_CLOSED -> closed[device];
            case SWITCH_OPEN, LINK_OPEN -> !closed[device];
            case RELAYS_OPEN, GRID_PRESENT, MAY_RUN -> false;
        };
    }

    private boolean requests(SignalMeaning meaning) {
        if (phase == Phase.DARK || !surroundings.invertersOn()) return false;
        return switch (meaning) {
            case SWITCH_CLOSED -> phase.wantsSwitchClosed();
            case SWITCH_OPEN -> !phase.wantsSwitchClosed();
            case LINK_CLOSED -> phase.wantsLinkClosed();
            case LINK_OPEN -> !phase.wantsLinkClosed();
            case RELAYS_OPEN -> phase.isOff();
            case GRID_PRESENT -> phase == Phase.FOLLOWING;
            case MAY_RUN -> phase != Phase.STOPPED && phase != Phase.LOCKED;
        };
    }

    /** Starts or stops the main contacts on their way. */
    private void move() {
        List<Device> devices = model.devices();
        for (int d = 0; d < closed.length; d++) {
            Device device = devices.get(d);
            if (device.drive == Drive.HAND || (unmoved >>> d & 1) != 0) continue;
            if (surroundings.byHand() != Surroundings.ByHand.NOTHING) continue;
            boolean target = device.drive == Drive.INSIDE ? inside(device) : senses.target(this, device, closed[d]);
            if (target == closed[d]) moving[d] = NEVER;
            else if (moving[d] == NEVER) moving[d] = target ? device.operateTimeS : device.releaseTimeS;
        }
    }

    private boolean inside(Device device) {
        if (phase == Phase.DARK || phase == Phase.STOPPED)
            return switch (device.rest) {
                case OPEN -> false;
                case CLOSED -> true;
                case AS_IT_WAS -> closed[model.device(device.id)];
            };
        return device.role == Role.SWITCH ? phase.wantsSwitchClosed() : phase.wantsLinkClosed();
    }

    private Phase next() {
        if (!surroundings.energy()) return Phase.DARK;
        if (phase == Phase.LOCKED) return phase;
        if (!mayRun()) return Phase.STOPPED;
        return switch (phase) {
            case DARK, STOPPED -> senses.seesGridFar(this) ? Phase.UNLINKING : Phase.SEPARATING;
            case FOLLOWING -> senses.seesGridNear(this) ? phase : Phase.LOSING;
            case LOSING -> phase;
            case SEPARATING -> senses.isSeparated(this) ? hasLink() ? Phase.EARTHING : Phase.STARTING : phase;
            case EARTHING -> !senses.isSeparated(this) ? Phase.LOCKED : senses.isLinked(this) ? Phase.STARTING : phase;
            case STARTING -> senses.isSeparated(this) && isLinkKept() ? phase : Phase.LOCKED;
            case FORMING, OBSERVING -> forming();
            case UNLINKING -> senses.isUnlinked(this) ? Phase.CLOSING : phase;
            case CLOSING -> senses.isClosed(this) && senses.seesGridNear(this) ? Phase.FOLLOWING : phase;
            case LOCKED -> phase;
        };
    }

    private Phase forming() {
        int clashes = nets.clashes();
        // It shuts off by itself, yet it has been on the grid out of step.
        if ((clashes & Nets.Clash.PARALLEL) != 0) outOfStep = surroundings.gridLines();
        if ((clashes & (Nets.Clash.ISLAND | Nets.Clash.PARALLEL)) != 0) return Phase.LOCKED;
        if (!senses.isSeparated(this) || !isLinkKept()) return Phase.LOCKED;
        return senses.seesGridFar(this) ? Phase.OBSERVING : Phase.FORMING;
    }

    private boolean isLinkKept() {
        return !hasLink() || senses.isLinked(this);
    }

    private boolean hasLink() {
        for (Device device : model.devices()) if (device.role == Role.LINK) return true;
        return false;
    }

    private boolean mayRun() {
        if (!surroundings.invertersOn() || model.findLeader().isEmpty()) return false;
        if (surroundings.byPassed() && isInterlocked()) return false;
        return senses.mayRun(this);
    }

    private boolean isInterlocked() {
        for (ByPass byPass : model.installation().byPasses())
            if (byPass.kind() == ByPassKind.PLAIN || byPass.kind() == null) return false;
        return true;
    }

    /** What the inverter is about. */
    public Phase phase() {
        return phase;
    }

    /** Whether the run never came to rest: it starts anew for ever, or a contact chatters. */
    public boolean isUnsettled() {
        return unsettled;
    }

    /** Whether a control supply feeds a short-circuit or was hit by a line conductor. */
    public boolean isSupplyShorted() {
        return solution.isShorted;
    }

    /** Whether at the last event a forming source was joined to the live grid. */
    boolean wasOutOfStep() {
        return outOfStep;
    }

    /** Lines, neutrals and earth as they stand. */
    public Nets nets() {
        return nets;
    }

    /** Whether a switching device's mechanism is closed. */
    public boolean isClosed(tideover.engine.site.ThingId device) {
        return closed[model.device(device)];
    }

    /** Whether an input, output or coil is on; a bus port: whether the asking side gets an answer from it. */
    public boolean isOn(ControlPort port) {
        return senses.isOn(this, port);
    }

    /** Whether the client gets answers from a server. */
    public boolean isAnswered(BusPort server) {
        return senses.isAnswered(this, server);
    }

    /** What surrounds it. */
    public Surroundings surroundings() {
        return surroundings;
    }

    boolean isInverterAwake() {
        return surroundings.energy() && surroundings.invertersOn();
    }

    SwitchingNet.Solved controlNets() {
        return solution.nets;
    }

    boolean isOutputOn(ControlPort port) {
        return (outputsOn >>> control.outputGate(port) & 1) != 0;
    }

    boolean isMechanismClosed(int device) {
        return closed[device];
    }

    /** Whether all poles of a device stand open. */
    boolean areAllOpen(int device) {
        return (gates & model.devices().get(device).gates()) == 0;
    }

    /** What is wrong in this run. */
    Defect defect() {
        return defect;
    }

    HouseModel model() {
        return model;
    }

    double[] movingS() {
        return moving;
    }

    long[] tripped() {
        return tripped;
    }

    /** Positions of all gates; the main fuse is one bit above them. */
    long gatesNow() {
        return gates | (mainFuse ? 1L << 62 : 0);
    }

    /** Positions of all mechanisms, one bit each. */
    long mechanisms() {
        long bits = 0;
        for (int d = 0; d < closed.length; d++) if (closed[d]) bits |= 1L << d;
        return bits;
    }

    /** Until the inverter's own time has run out; infinite where none runs [s]. */
    double timeLeftS() {
        return left;
    }
}
