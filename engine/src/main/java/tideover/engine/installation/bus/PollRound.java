package tideover.engine.installation.bus;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.verbatim;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Trace;
import tideover.engine.rules.Unit;
import tideover.engine.site.BusMedium;
import tideover.engine.site.BusPort;
import tideover.engine.site.FactId;

/**
 * One round of questions: the client asks each server in turn, and one question stays unanswered until it is given up. On
 * a network only the servers' own time counts.
 *
 * @param client  asks
 * @param servers answer
 */
public record PollRound(BusPort client, List<BusPort> servers) {

    private static final List<String> OF_SERVER = List.of("registers", "requests", "turnaroundS");

    public PollRound {
        servers = List.copyOf(servers);
    }

    /** Facts it rests on. */
    public List<FactId> facts() {
        List<FactId> facts = new ArrayList<>();
        for (String field : ofClient()) facts.add(client.fact(field));
        for (BusPort server : servers) for (String field : OF_SERVER) facts.add(server.fact(field));
        return facts;
    }

    /** Those of them that nobody has stated. */
    public List<FactId> missing() {
        List<FactId> missing = new ArrayList<>(0);
        for (String field : ofClient()) if (client.value(field) == null) missing.add(client.fact(field));
        for (BusPort server : servers)
            for (String field : OF_SERVER) if (server.value(field) == null) missing.add(server.fact(field));
        return missing;
    }

    private List<String> ofClient() {
        return isOnLine()
                ? List.of("responseNeededS", "timeoutS", "rateBitPerS", "parity", "stopBits")
                : List.of("responseNeededS", "timeoutS");
    }

    private boolean isOnLine() {
        return client.medium() == BusMedium.RS485;
    }

    /**
     * Longest time until a value is known anew [s].
     *
     * @throws IllegalStateException if facts are missing
     */
    public double lengthS() {
        double sumS = number(client, "timeoutS");
        for (BusPort server : servers) sumS += number(server, "requests") * requestS(server);
        return sumS;
    }

    private double requestS(BusPort server) {
        double turnaroundS = number(server, "turnaroundS");
        return isOnLine() ? timing().requestS((int) number(server, "registers"), turnaroundS) : turnaroundS;
    }

    private BusTiming timing() {
        if (client.parity() == null) throw new IllegalStateException("parity of %s is missing".formatted(client.id()));
        return BusTiming.of((int) number(client, "rateBitPerS"), client.parity(), (int) number(client, "stopBits"));
    }

    /** Takes down how its length comes about, and what one should see on the line. */
    void trace(Trace trace) {
        if (!trace.isOn()) return;
        if (isOnLine())
            trace.line(
                    "calculation.bus.timing",
                    amount(timing().characterS(), Unit.S),
                    amount(timing().outerGapS(), Unit.S));
        for (BusPort server : servers) {
            trace.line(
                    "calculation.bus.request",
                    Devices.of(server),
                    count((int) number(server, "requests")),
                    count((int) number(server, "registers")),
                    amount(requestS(server), Unit.S));
            Integer address = server.address();
            int registers = (int) number(server, "registers");
            // From register 0, because nobody has stated from which it is read.
            if (address != null
                    && address >= 1
                    && address <= 247
                    && registers >= 1
                    && registers <= ModbusFrame.MOST_REGISTERS)
                trace.line(
                        "calculation.bus.frame",
                        Devices.of(server),
                        verbatim(
                                isOnLine()
                                        ? ModbusFrame.serial(
                                                address, ModbusFrame.Function.HOLDING_REGISTERS, 0, registers)
                                        : ModbusFrame.tcp(
                                                1, address, ModbusFrame.Function.HOLDING_REGISTERS, 0, registers)));
        }
        trace.line("calculation.bus.round", amount(number(client, "timeoutS"), Unit.S), amount(lengthS(), Unit.S));
    }

    private static double number(BusPort port, String field) {
        if (port.value(field) instanceof Number number) return number.doubleValue();
        throw new IllegalStateException("%s of %s is missing".formatted(field, port.id()));
    }
}
