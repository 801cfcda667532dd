package tideover.reference.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.network.flow.Short;
import tideover.reference.network.NetworkCase.Wires;

/**
 * A network drawn by a seed: two to fourteen places of L1, L2, L3, N and PE, joined as a tree and by a few cables more,
 * some cables coupled, some conductors missing, some terminals without impedance, neutral and PE linked here and there.
 */
final class DrawnNetwork {

    private static final int CONDUCTORS = 5;
    private static final int N = 3;
    private static final int PE = 4;

    private final Random random;
    private final FourWireNetwork.Builder builder = FourWireNetwork.builder();
    private final List<int[]> places = new ArrayList<>();
    private final List<Wires> wires = new ArrayList<>();
    private final List<PowerLoad> loads = new ArrayList<>();

    private DrawnNetwork(long seed) {
        random = new Random(seed);
    }

    static NetworkCase flow(long seed) {
        return new DrawnNetwork(seed).draw(seed, false);
    }

    static NetworkCase fault(long seed) {
        return new DrawnNetwork(seed).draw(seed, true);
    }

    private NetworkCase draw(long seed, boolean fault) {
        addSource();
        int count = 1 + random.nextInt(13);
        for (int i = 0; i < count; i++) addPlace();
        for (int i = random.nextInt(4); i > 0; i--) addLoop();
        for (int i = random.nextInt(3); i > 0; i--) tie(PE, PE, 0.5 + 40 * random.nextDouble(), true);
        for (int i = random.nextInt(3); i > 0; i--) tie(N, PE, 0.001 + 0.01 * random.nextDouble(), false);
        Map<String, Short> shorts = new LinkedHashMap<>();
        if (fault) addShorts(shorts);
        else for (int i = random.nextInt(12); i > 0; i--) addLoad();
        return new NetworkCase(
                "seed " + seed,
                fault,
                builder.build(),
                new HashMap<>(),
                new HashMap<>(),
                wires,
                Map.of(),
                loads,
                shorts);
    }

    private void addSource() {
        int[] place = new int[CONDUCTORS];
        for (int c = 0; c < CONDUCTORS; c++) place[c] = builder.point();
        places.add(place);
        single(place[N], FourWireNetwork.EARTH, Phasor.of(0.5 + random.nextDouble()), Phasor.ZERO);
        single(place[N], place[PE], Phasor.of(0.001), Phasor.ZERO);
        for (int line = 0; line < 3; line++)
            single(
                    place[N],
                    place[line],
                    new Phasor(0.02 + 0.1 * random.nextDouble(), 0.02 * random.nextDouble()),
                    Phasor.polar(225 + 10 * random.nextDouble(), -120 * line + 4 * random.nextDouble()));
    }

    private void single(int from, int to, Phasor ohm, Phasor emfV) {
        wires.add(new Wires(List.of(builder.source(from, to, emfV, ohm)), List.of(List.of(ohm)), emfV));
    }

    private int[] any() {
        return places.get(random.nextInt(places.size()));
    }

    private void addPlace() {
        int[] from = any();
        int[] to = new int[CONDUCTORS];
        boolean isSinglePhase = random.nextInt(3) == 0;
        int only = line(from);
        List<Integer> conductors = new ArrayList<>();
        for (int c = 0; c < CONDUCTORS; c++)
            if (from[c] != 0 && (c >= N || !isSinglePhase || c == only)) conductors.add(c);
        for (int c : conductors) to[c] = builder.point();
        boolean isBare = random.nextInt(6) == 0;
        if (isBare) for (int c : conductors) single(from[c], to[c], Phasor.ZERO, Phasor.ZERO);
        else cable(from, to, conductors);
        places.add(to);
    }

    private void addLoop() {
        int[] from = any();
        int[] to = any();
        List<Integer> conductors = new ArrayList<>();
        for (int c = 0; c < CONDUCTORS; c++) if (from != to && from[c] != 0 && to[c] != 0) conductors.add(c);
        if (!conductors.isEmpty()) cable(from, to, conductors);
    }

    private void cable(int[] from, int[] to, List<Integer> conductors) {
        double lengthM = 1 + 99 * random.nextDouble();
        boolean isCoupled = random.nextInt(3) == 0;
        List<List<Phasor>> ohm = new ArrayList<>();
        for (int i = 0; i < conductors.size(); i++) {
            List<Phasor> row = new ArrayList<>();
            for (int j = 0; j < conductors.size(); j++) {
                if (i == j) row.add(new Phasor(lengthM * 0.005, lengthM * 0.0003));
                else row.add(isCoupled ? new Phasor(lengthM * 0.00005, lengthM * 0.0002) : Phasor.ZERO);
            }
            ohm.add(row);
        }
        List<Integer> starts = conductors.stream().map(c -> from[c]).toList();
        List<Integer> ends = conductors.stream().map(c -> to[c]).toList();
        List<Integer> own = new ArrayList<>();
        int first = isCoupled ? builder.coupled(starts, ends, ohm) : -1;
        for (int i = 0; i < conductors.size(); i++)
            own.add(
                    isCoupled
                            ? first + i
                            : builder.branch(
                                    starts.get(i), ends.get(i), ohm.get(i).get(i)));
        wires.add(new Wires(own, ohm, Phasor.ZERO));
    }

    private void tie(int one, int other, double ohm, boolean toEarth) {
        int[] place = any();
        single(place[one], toEarth ? FourWireNetwork.EARTH : place[other], Phasor.of(ohm), Phasor.ZERO);
    }

    private int line(int[] place) {
        int line = random.nextInt(3);
        while (place[line] == 0) line = (line + 1) % 3;
        return line;
    }

    private void addLoad() {
        int[] place = any();
        int line = line(place);
        int other = random.nextInt(4) == 0 && place[(line + 1) % 3] != 0 ? (line + 1) % 3 : N;
        double powerRatio = random.nextInt(3) / 2.0;
        double currentRatio = (1 - powerRatio) * random.nextInt(2);
        PowerLoad load = new PowerLoad(
                place[line],
                place[other],
                2500 * (random.nextDouble() - 0.25),
                800 * (random.nextDouble() - 0.3),
                other == N ? 230 : 230 * Math.sqrt(3),
                powerRatio,
                currentRatio,
                1 - powerRatio - currentRatio);
        builder.load(load);
        loads.add(load);
    }

    private void addShorts(Map<String, Short> shorts) {
        int[] place = any();
        int line = line(place);
        double ohm = random.nextBoolean() ? 0.001 : random.nextDouble();
        shorts.put("first", new Short(place[line], place[random.nextBoolean() ? N : PE], ohm));
        int[] second = any();
        if (random.nextInt(3) == 0) shorts.put("second", new Short(second[line(second)], second[PE], 0.05));
    }
}
