package tideover.reference.network;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.network.flow.Short;

/**
 * One reference case as our solver takes it.
 *
 * @param name     of the case and its file
 * @param fault    whether the shorts are made; a fault has no loads
 * @param network  runs, ties and sources as branches; loads
 * @param points   number of each point by its name
 * @param branches number of each branch by kind and name, such as "run main/1" or "source gridL1"
 * @param wires    what the file says about the branches
 * @param limitA   most that a source gives, by the number of its branch
 * @param loads    in order
 * @param shorts   connections of the fault by name, in order
 */
record NetworkCase(
        String name,
        boolean fault,
        FourWireNetwork network,
        Map<String, Integer> points,
        Map<String, Integer> branches,
        List<Wires> wires,
        Map<Integer, Double> limitA,
        List<PowerLoad> loads,
        Map<String, Short> shorts) {

    static final Path FOLDER = Path.of("src", "test", "resources", "tideover", "reference", "network");

    /**
     * The conductors of a run, or a tie or source alone.
     *
     * @param branches number of each
     * @param ohm      impedances, own ones in the diagonal [Ω]
     * @param emfV     of a source [V], else 0
     */
    record Wires(List<Integer> branches, List<List<Phasor>> ohm, Phasor emfV) {}

    private static final List<NetworkCase> ALL = readAll();

    static List<NetworkCase> all() {
        return ALL;
    }

    private static List<NetworkCase> readAll() {
        try (Stream<Path> files = Files.list(FOLDER.resolve("cases"))) {
            return files.sorted().map(NetworkCase::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static NetworkCase read(Path file) {
        try {
            return CaseReader.read(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
