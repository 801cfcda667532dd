package tideover.engine.installation.bus;

import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.verbatim;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.BusPort;
import tideover.engine.site.FactId;
import tideover.engine.site.Parity;

/** Client and servers of a line have the same rate, parity and stop bits. */
final class FrameCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.frame";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        for (BusLine line : bus.lines())
            for (BusPort server : line.servers()) {
                if (line.head().id().equals(server.id())) continue;
                Judging.Draft draft = judging.at(server.id());
                if (limit.isEmpty()) draft.openForLimit(LIMIT);
                else judge(line.head(), server, draft.by(limit.get()));
            }
    }

    private static void judge(BusPort client, BusPort server, Judging.Draft draft) {
        List<FactId> missing = new ArrayList<>(0);
        for (BusPort port : List.of(client, server)) {
            for (String field : List.of("rateBitPerS", "parity", "stopBits")) {
                draft.on(port.fact(field));
                if (port.value(field) == null) missing.add(port.fact(field));
            }
        }
        Integer rate = server.rateBitPerS();
        Parity parity = server.parity();
        Integer stopBits = server.stopBits();
        Integer askedRate = client.rateBitPerS();
        Parity askedParity = client.parity();
        Integer askedStopBits = client.stopBits();
        if (rate == null || parity == null || stopBits == null) {
            draft.openFor(missing);
        } else if (askedRate == null || askedParity == null || askedStopBits == null) {
            draft.openFor(missing);
        } else if (rate.equals(askedRate) && parity == askedParity && stopBits.equals(askedStopBits)) {
            draft.met(
                    "bus.frame.met", Devices.of(client), Devices.of(server), rate(rate), word(parity), count(stopBits));
        } else {
            draft.notMet(
                    "bus.frame.differs",
                    Devices.of(client),
                    rate(askedRate),
                    word(askedParity),
                    count(askedStopBits),
                    Devices.of(server),
                    rate(rate),
                    word(parity),
                    count(stopBits));
        }
    }

    private static PhraseArg rate(int rateBitPerS) {
        return verbatim(Integer.toString(rateBitPerS));
    }
}
