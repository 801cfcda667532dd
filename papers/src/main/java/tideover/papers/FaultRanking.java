package tideover.papers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tideover.engine.protection.Clearing;
import tideover.engine.protection.Extreme;
import tideover.engine.protection.FaultCourse;
import tideover.engine.protection.FaultKind;
import tideover.engine.site.ThingId;

/** Which of many faults are told first, and which of several alike stands for the others. */
public final class FaultRanking {

    /** Never before not known before late; of equals the smaller current, which leaves a device more doubt. */
    private static final Comparator<FaultCourse> SLOWER = Comparator.<FaultCourse>comparingInt(
                    course -> course.clearing() instanceof Clearing.Never ? 1 : 0)
            .thenComparingDouble(course -> course.clearing().latestS())
            .thenComparingDouble(course -> -course.currentA());

    private static final Comparator<FaultCourse> LARGER = Comparator.comparingDouble(FaultCourse::currentA);

    private FaultRanking() {}

    /** The worst faults by what makes them so: keys of the bundle and stories, no story twice. */
    public static Map<String, FaultCourse> worst(List<FaultCourse> faults) {
        Map<String, FaultCourse> worst = new LinkedHashMap<>();
        add("network.worst.earth", slowest(faults, FaultKind.LINE_TO_EARTH), worst);
        add("network.worst.neutral", slowest(faults, FaultKind.LINE_TO_NEUTRAL), worst);
        add(
                "network.worst.touch",
                faults.stream()
                        .filter(course -> course.kind() == FaultKind.LINE_TO_EARTH && course.currentA() > 0)
                        .max(Comparator.comparingDouble(FaultCourse::touchVoltageV)),
                worst);
        // A source that gives all it can gives as much to every fault.
        add(
                "network.worst.largest",
                faults.stream().max(LARGER).filter(course -> course.answer() != FaultCourse.SourceAnswer.LIMITED),
                worst);
        return worst;
    }

    private static void add(String key, Optional<FaultCourse> course, Map<String, FaultCourse> worst) {
        if (course.isPresent() && !worst.containsValue(course.get())) worst.put(key, course.get());
    }

    /** The fault of a kind that is the last to end, at its smallest current. */
    public static Optional<FaultCourse> slowest(List<FaultCourse> faults, FaultKind kind) {
        return faults.stream()
                .filter(course -> course.kind() == kind && course.extreme() == Extreme.SMALLEST)
                .max(SLOWER);
    }

    /** One fault at one place between like conductors: of its lines the worst, at both extremes. */
    public record Pair(FaultCourse smallest, FaultCourse largest) {}

    /** Faults by place and kind, in the order in which they are given. */
    public static List<Pair> pairs(List<FaultCourse> faults) {
        Map<ThingId, Map<FaultKind, List<FaultCourse>>> groups = new LinkedHashMap<>();
        for (FaultCourse course : faults)
            groups.computeIfAbsent(course.place(), p -> new LinkedHashMap<>())
                    .computeIfAbsent(course.kind(), k -> new ArrayList<>())
                    .add(course);
        List<Pair> pairs = new ArrayList<>();
        for (Map<FaultKind, List<FaultCourse>> kinds : groups.values())
            kinds.forEach((kind, alike) -> {
                Optional<FaultCourse> smallest = slowest(alike, kind);
                Optional<FaultCourse> largest = alike.stream()
                        .filter(course -> course.extreme() == Extreme.LARGEST)
                        .max(LARGER);
                if (smallest.isPresent() && largest.isPresent()) pairs.add(new Pair(smallest.get(), largest.get()));
            });
        return pairs;
    }
}
