package tideover.engine.starting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Importance;
import tideover.engine.site.StayOn;
import tideover.engine.site.ThingId;

/**
 * Looks for an order in which all circuits of an island can be switched on, each after the motors before it have run up.
 *
 * <p>What has a start comes first, then all the rest together. A start leaves room for what runs already: what its line
 * gives for that long, less the start, plus what the motor draws afterwards. Who leaves least comes first; on one line no
 * other order succeeds where this one fails (earliest due date, Jackson 1955). Neighbours in that order that can start
 * together make one step.
 */
final class PickUpSearch {

    /** Starts in the order in which they are tried, then the rest. */
    private final List<PickUpItem> items;

    private final List<Capacity> capacities;
    private final Bound bound;

    PickUpSearch(List<PickUpItem> items, List<Capacity> capacities, Bound bound) {
        this.capacities = capacities;
        this.bound = bound;
        this.items = items.stream()
                .sorted(Comparator.comparing((PickUpItem item) -> !item.hasStart())
                        .thenComparingDouble(this::roomA)
                        .thenComparing(item -> item.circuit().id()))
                .toList();
    }

    PickUp pickUp() {
        Peak atOnce = tightest(Currents.ZERO, items);
        if (atOnce.isCarried()) return new PickUp.AllAtOnce(atOnce);
        Attempt all = attempt(items);
        if (all.failedOn() == null) return new PickUp.InSequence(atOnce, all.steps());
        List<PickUpItem> kept = new ArrayList<>(items);
        List<PickUpItem> heldBack = new ArrayList<>();
        for (Attempt attempt = all; attempt.failedOn() != null; attempt = attempt(kept)) {
            PickUpItem next = leastWanted(kept, attempt.failedOn());
            kept.remove(next);
            heldBack.add(next);
        }
        // What was held back early may find room again now that others are off.
        for (PickUpItem back : List.copyOf(heldBack)) {
            List<PickUpItem> more = new ArrayList<>(items);
            more.removeIf(item -> !item.equals(back) && heldBack.contains(item));
            if (attempt(more).failedOn() == null) heldBack.remove(back);
        }
        kept.clear();
        kept.addAll(items);
        kept.removeAll(heldBack);
        return new PickUp.NotPossible(
                atOnce,
                heldBack.stream().map(item -> item.circuit().id()).toList(),
                attempt(kept).steps());
    }

    /** Steps, or the capacity on which they failed. */
    private record Attempt(
            List<PickUp.Step> steps, @Nullable Capacity failedOn) {}

    private Attempt attempt(List<PickUpItem> ordered) {
        List<PickUp.Step> steps = new ArrayList<>();
        Currents before = Currents.ZERO;
        double atS = 0;
        int next = 0;
        while (next < ordered.size()) {
            List<PickUpItem> together = together(before, ordered.subList(next, ordered.size()));
            Capacity failedOn = failedOn(before, together);
            if (failedOn != null) return new Attempt(steps, failedOn);
            steps.add(new PickUp.Step(
                    together.stream().map(item -> item.circuit().id()).toList(), atS));
            for (PickUpItem item : together) before = before.plus(item.running());
            atS += together.stream().mapToDouble(PickUpItem::startS).max().orElse(0);
            next += together.size();
        }
        return new Attempt(steps, null);
    }

    /** The next start and those that can begin with it; once all have run up, all the rest. */
    private List<PickUpItem> together(Currents before, List<PickUpItem> waiting) {
        if (!waiting.get(0).hasStart()) return waiting;
        int count = 1;
        while (count < waiting.size()
                && waiting.get(count).hasStart()
                && failedOn(before, waiting.subList(0, count + 1)) == null) count++;
        return waiting.subList(0, count);
    }

    private @Nullable Capacity failedOn(Currents before, List<PickUpItem> together) {
        for (Capacity capacity : capacities)
            for (double timeS : moments(together))
                if (!peak(capacity, before, together, timeS).isCarried()) return capacity;
        return null;
    }

    private Peak tightest(Currents before, List<PickUpItem> together) {
        Peak tightest = null;
        for (Capacity capacity : capacities)
            for (double timeS : moments(together)) {
                Peak peak = peak(capacity, before, together, timeS);
                if (peak.isTighterThan(tightest)) tightest = peak;
            }
        return Objects.requireNonNull(tightest, "an island has a line");
    }

    /** The moments at which a start ends, and for ever. */
    private static Iterable<Double> moments(List<PickUpItem> together) {
        TreeSet<Double> moments = new TreeSet<>();
        for (PickUpItem item : together) if (item.hasStart()) moments.add(item.startS());
        moments.add(Double.POSITIVE_INFINITY);
        return moments;
    }

    private Peak peak(Capacity capacity, Currents before, List<PickUpItem> together, double timeS) {
        Currents during = before;
        for (PickUpItem item : together) during = during.plus(item.after(timeS));
        return capacity.peak(before, during, timeS, bound);
    }

    private double roomA(PickUpItem item) {
        double roomA = Double.POSITIVE_INFINITY;
        for (Capacity capacity : capacities) {
            if (!capacity.concerns(item.lines())) continue;
            double timeS = item.hasStart() ? item.startS() : Double.POSITIVE_INFINITY;
            roomA = Math.min(
                    roomA,
                    capacity.allowedA(timeS, bound)
                            - item.starting().meanA(capacity.lines())
                            + item.running().meanA(capacity.lines()));
        }
        return roomA;
    }

    /** What can best do without: not what must stay on, then what the customer wants least, then what draws most. */
    private static PickUpItem leastWanted(List<PickUpItem> kept, Capacity failedOn) {
        return kept.stream()
                .filter(item -> item.running().meanA(failedOn.lines()) > 0)
                .max(Comparator.comparing((PickUpItem item) -> item.circuit().stayOn() != StayOn.MUST)
                        .thenComparing(item -> -importance(item))
                        .thenComparingDouble(item -> item.running().meanA(failedOn.lines()))
                        .thenComparing(item -> item.circuit().id(), Comparator.<ThingId>reverseOrder()))
                .orElseThrow();
    }

    /** The customer's order; what nobody has asked about stands with what can wait. */
    private static int importance(PickUpItem item) {
        Importance importance = item.circuit().importance();
        if (importance == null) return 0;
        return switch (importance) {
            case CAN_WAIT -> 0;
            case NICE -> 1;
            case IMPORTANT -> 2;
            case MUST_RUN -> 3;
        };
    }
}
