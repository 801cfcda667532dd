package tideover.reference.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.network.flow.Short;
import tideover.reference.network.NetworkCase.Wires;

/** Reads a case. Its JSON is read as the YAML it also is. */
final class CaseReader {

    private final Map<?, ?> content;
    private final FourWireNetwork.Builder builder = FourWireNetwork.builder();
    private final Map<String, Integer> points = new LinkedHashMap<>();
    private final Map<String, Integer> branches = new LinkedHashMap<>();
    private final List<Wires> wires = new ArrayList<>();
    private final List<PowerLoad> loads = new ArrayList<>();
    private final Map<String, Short> shorts = new LinkedHashMap<>();

    private CaseReader(Map<?, ?> content) {
        this.content = content;
        points.put("earth", FourWireNetwork.EARTH);
    }

    static NetworkCase read(String text) {
        return new CaseReader((Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text)).read();
    }

    private NetworkCase read() {
        elements("runs").forEach(this::run);
        elements("ties").forEach(tie -> single("tie ", tie, Phasor.ZERO));
        elements("sources").forEach(source -> single("source ", source, phasor(source.get("emfV"))));
        elements("loads").forEach(this::load);
        for (Map<?, ?> one : elements("shorts"))
            shorts.put(
                    String.valueOf(one.get("id")),
                    new Short(from(one), to(one), phasor(one.get("ohm")).real()));
        return new NetworkCase(
                String.valueOf(content.get("name")),
                "fault".equals(content.get("kind")),
                builder.build(),
                points,
                branches,
                wires,
                limitA(),
                loads,
                shorts);
    }

    private void run(Map<?, ?> run) {
        List<Integer> from = numbers(run.get("from"));
        List<Integer> to = numbers(run.get("to"));
        List<List<Phasor>> ohm = new ArrayList<>();
        for (Object row : (List<?>) run.get("ohm"))
            ohm.add(((List<?>) row).stream().map(CaseReader::phasor).toList());
        List<Integer> own = new ArrayList<>();
        if (isCoupled(ohm)) {
            int first = builder.coupled(from, to, ohm);
            for (int i = 0; i < from.size(); i++) own.add(first + i);
        } else {
            for (int i = 0; i < from.size(); i++)
                own.add(builder.branch(from.get(i), to.get(i), ohm.get(i).get(i)));
        }
        for (int i = 0; i < own.size(); i++) branches.put("run %s/%d".formatted(run.get("id"), i + 1), own.get(i));
        wires.add(new Wires(own, ohm, Phasor.ZERO));
    }

    private void single(String kind, Map<?, ?> element, Phasor emfV) {
        Phasor ohm = phasor(element.get("ohm"));
        int branch = builder.source(from(element), to(element), emfV, ohm);
        branches.put(kind + element.get("id"), branch);
        wires.add(new Wires(List.of(branch), List.of(List.of(ohm)), emfV));
    }

    private void load(Map<?, ?> load) {
        PowerLoad one = new PowerLoad(
                from(load),
                to(load),
                number(load.get("powerW")),
                number(load.get("reactiveVar")),
                number(load.get("voltageV")),
                number(load.get("powerShare")),
                number(load.get("currentShare")),
                number(load.get("impedanceShare")));
        builder.load(one);
        loads.add(one);
    }

    private Map<Integer, Double> limitA() {
        if (!(content.get("limit") instanceof Map<?, ?> limit)) return Map.of();
        Integer branch = branches.get("source " + limit.get("source"));
        if (branch == null) throw new AssertionError("there is no source for " + limit);
        return Map.of(branch, number(limit.get("currentA")));
    }

    private static boolean isCoupled(List<List<Phasor>> ohm) {
        for (int i = 0; i < ohm.size(); i++)
            for (int j = 0; j < i; j++) if (ohm.get(i).get(j).magnitude() > 0) return true;
        return false;
    }

    private List<Map<?, ?>> elements(String kind) {
        List<Map<?, ?>> elements = new ArrayList<>();
        for (Object element : (List<?>) content.get(kind)) elements.add((Map<?, ?>) element);
        return elements;
    }

    private int from(Map<?, ?> element) {
        return point(String.valueOf(element.get("from")));
    }

    private int to(Map<?, ?> element) {
        return point(String.valueOf(element.get("to")));
    }

    private List<Integer> numbers(Object names) {
        return ((List<?>) names).stream().map(String::valueOf).map(this::point).toList();
    }

    private int point(String name) {
        return points.computeIfAbsent(name, unseen -> builder.point());
    }

    private static Phasor phasor(Object pair) {
        List<?> parts = (List<?>) pair;
        return new Phasor(number(parts.get(0)), number(parts.get(1)));
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }
}
