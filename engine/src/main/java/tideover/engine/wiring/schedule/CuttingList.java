package tideover.engine.wiring.schedule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What to cut, by sort. Cables are cut as a whole, single wires one by one. A control cable is one whose cores can be told
 * apart, by their marks, as pairs, or because it has a screen or spare cores; else it is a bundle of single wires.
 *
 * @param allowanceM what each piece is longer than the way it lies, both ends together [m], 0 or more
 * @param cuts       sort by sort, in the order in which the schedules name them
 */
public record CuttingList(double allowanceM, List<Cut> cuts) {

    /** What is usual: room for both ends to be led to their terminals, stripped and cut again once. Own choice [m]. */
    public static final double USUAL_ALLOWANCE_M = 0.3;

    public CuttingList {
        if (!(allowanceM >= 0) || Double.isInfinite(allowanceM))
            throw new IllegalArgumentException("allowanceM %s is not 0 or more".formatted(allowanceM));
        cuts = List.copyOf(cuts);
    }

    /** The list of what both schedules lay anew. */
    public static CuttingList of(PowerSchedule power, ControlSchedule control, double allowanceM) {
        Map<Cut.Stock, List<Cut.Piece>> pieces = new LinkedHashMap<>();
        for (String run : power.runs()) {
            List<PowerRow> rows = power.run(run);
            if (rows.get(0).laying() == Laying.CABLE) {
                add(pieces, cable(rows), run, longer(rows.get(0).lengthM(), allowanceM));
                continue;
            }
            for (PowerRow row : rows)
                if (row.laying() == Laying.WIRE)
                    add(pieces, wire(row), row.designation(), longer(row.lengthM(), allowanceM));
        }
        for (List<CoreRow> rows : control.cables()) {
            CoreRow first = rows.get(0);
            if (isCable(rows)) {
                add(pieces, cable(rows, first), first.run(), longer(first.lengthM(), allowanceM));
                continue;
            }
            for (CoreRow row : rows) add(pieces, wire(row), row.designation(), longer(row.lengthM(), allowanceM));
        }
        List<Cut> cuts = new ArrayList<>();
        pieces.forEach((stock, of) -> cuts.add(new Cut(stock, of)));
        return new CuttingList(allowanceM, cuts);
    }

    private static void add(
            Map<Cut.Stock, List<Cut.Piece>> pieces, Cut.Stock stock, String designation, @Nullable Double lengthM) {
        pieces.computeIfAbsent(stock, s -> new ArrayList<>()).add(new Cut.Piece(designation, lengthM));
    }

    private static @Nullable Double longer(@Nullable Double lengthM, double allowanceM) {
        return lengthM == null ? null : Double.valueOf(lengthM + allowanceM);
    }

    private static Cut.Stock cable(List<PowerRow> rows) {
        Double crossSectionMm2 = rows.get(0).crossSectionMm2();
        double thinnestMm2 = rows.stream()
                .map(PowerRow::crossSectionMm2)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(0);
        boolean differ = crossSectionMm2 != null && thinnestMm2 < crossSectionMm2;
        return new Cut.Stock(
                Cut.Kind.POWER_CABLE,
                rows.size(),
                crossSectionMm2,
                differ ? Double.valueOf(thinnestMm2) : null,
                null,
                rows.get(0).material());
    }

    private static Cut.Stock wire(PowerRow row) {
        return new Cut.Stock(Cut.Kind.POWER_WIRE, 1, row.crossSectionMm2(), null, row.colour(), row.material());
    }

    private static Cut.Stock cable(List<CoreRow> rows, CoreRow first) {
        int cores =
                (int) rows.stream().filter(row -> row.kind() != CoreKind.SCREEN).count();
        return new Cut.Stock(Cut.Kind.CONTROL_CABLE, cores, first.crossSectionMm2(), null, null, null);
    }

    private static Cut.Stock wire(CoreRow row) {
        return new Cut.Stock(Cut.Kind.CONTROL_WIRE, 1, row.crossSectionMm2(), null, row.colour(), null);
    }

    static boolean isCable(List<CoreRow> rows) {
        Set<String> marks = new HashSet<>();
        boolean distinct = rows.size() > 1;
        for (CoreRow row : rows) {
            if (row.kind() == CoreKind.SCREEN || row.kind() == CoreKind.SPARE || row.pair() > 0) return true;
            distinct = distinct && row.mark() != null && marks.add(row.mark());
        }
        return distinct;
    }

    /** All pieces. */
    public List<Cut.Piece> pieces() {
        return cuts.stream().flatMap(cut -> cut.pieces().stream()).toList();
    }

    /** Sum of all pieces whose length is known [m]. */
    public double sumM() {
        return cuts.stream().mapToDouble(Cut::sumM).sum();
    }
}
