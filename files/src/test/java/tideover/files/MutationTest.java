package tideover.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.files.text.Sink;
import tideover.files.text.YamlSink;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.YamlText;

/** Whatever happens to an example, reading it gives a site or its problems, soon, and never another exception. */
@Tag("slow")
class MutationTest {
    private static final int MUTATIONS = 10_000;
    // One read takes a few milliseconds; counted in time of the processor, as a busy machine is no fault of the reader.
    private static final Duration LONGEST = Duration.ofSeconds(1);
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** Pieces that tend to break parsers and readers. */
    private static final String[] PIECES = {
        "",
        " ",
        "\t",
        "\n",
        ":",
        ": ",
        "- ",
        "{",
        "}",
        "[",
        "]",
        "'",
        "\"",
        "#",
        "&a ",
        "*a",
        "!!str ",
        "---\n",
        "...\n",
        "? ",
        "|\n",
        ">\n",
        "<<: ",
        "%YAML 1.2\n",
        "null",
        "~",
        ".nan",
        "-.inf",
        "1e999",
        "-0",
        "0x10",
        "1,5",
        "99999999999999999999",
        "\u0000",
        "\uFEFF",
        "\u2028",
        "ü",
        "🏠",
        "\\ud83d",
        "\\",
        "supply",
        "main-earth",
        "L1",
        "PEN",
        "true",
        "id: ",
        "fedFrom: ",
        "house:\n"
    };

    @TempDir
    private Path folder;

    @Test
    void tenThousandMutationsGiveASiteOrProblems() throws IOException {
        List<Path> seeds = copies();
        SplittableRandom random = new SplittableRandom(20261125);
        int readable = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            Path seed = seeds.get(random.nextInt(seeds.size()));
            byte[] whole = Files.readAllBytes(seed);
            byte[] mutated = i % 2 == 0 ? bytes(whole, random) : nodes(whole, random);
            // Beside its seed, so that a variant finds its base.
            Path file = Files.write(seed.resolveSibling("mutation.yaml"), mutated);
            long start = THREADS.getCurrentThreadCpuTime();
            SiteFileResult result;
            try {
                result = TestSites.FILES.read(file);
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError(
                        "mutation %d:%n%s".formatted(i, new String(mutated, StandardCharsets.UTF_8)), e);
            }
            assertThat(Duration.ofNanos(THREADS.getCurrentThreadCpuTime() - start))
                    .as("mutation %d", i)
                    .isLessThan(LONGEST);
            if (result instanceof SiteFileResult.Readable) readable++;
        }
        // Neither all refused nor all accepted: the mutations reach beyond the first check.
        assertThat(readable).isBetween(MUTATIONS / 100, MUTATIONS * 9 / 10);
    }

    /** The examples and the cottage, in a folder of the test. */
    private List<Path> copies() throws IOException {
        List<Path> copies = new ArrayList<>();
        for (Path example : TestSites.examples()) {
            Path copy = folder.resolve(Path.of("../examples").relativize(example));
            Files.createDirectories(copy.getParent());
            copies.add(Files.copy(example, copy));
        }
        copies.add(Files.writeString(folder.resolve("cottage.yaml"), TestSites.cottage()));
        return copies;
    }

    private static byte[] bytes(byte[] seed, SplittableRandom random) {
        byte[] bytes = seed.clone();
        for (int edits = random.nextInt(1, 4); edits > 0 && bytes.length > 0; edits--) {
            int at = random.nextInt(bytes.length);
            bytes = switch (random.nextInt(5)) {
                case 0 -> {
                    bytes[at] = (byte) random.nextInt(256);
                    yield bytes;
                }
                case 1 -> splice(bytes, at, Math.min(bytes.length, at + random.nextInt(200)), new byte[0]);
                case 2 -> {
                    int end = Math.min(bytes.length, at + random.nextInt(200));
                    yield splice(bytes, at, at, Arrays.copyOfRange(bytes, at, end));
                }
                case 3 -> Arrays.copyOf(bytes, Math.max(1, at));
                default ->
                    splice(bytes, at, at, PIECES[random.nextInt(PIECES.length)].getBytes(StandardCharsets.UTF_8));
            };
        }
        return bytes;
    }

    private static byte[] splice(byte[] bytes, int from, int to, byte[] between) {
        byte[] spliced = new byte[bytes.length - (to - from) + between.length];
        System.arraycopy(bytes, 0, spliced, 0, from);
        System.arraycopy(between, 0, spliced, from, between.length);
        System.arraycopy(bytes, to, spliced, from + between.length, bytes.length - to);
        return spliced;
    }

    /** The tree with one to three of its nodes replaced, doubled or lost, written out again. */
    private static byte[] nodes(byte[] seed, SplittableRandom random) {
        Node root = YamlText.read("seed", seed).root();
        for (int edits = random.nextInt(1, 4); edits > 0; edits--)
            root = mutate(root, new int[] {random.nextInt((int) root.size())}, all(root), random);
        YamlSink out = new YamlSink();
        write(root, out);
        return out.finish().getBytes(StandardCharsets.UTF_8);
    }

    private static List<Node> all(Node root) {
        List<Node> nodes = new ArrayList<>(List.of(root));
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i) instanceof Mapping mapping) for (Entry entry : mapping.entries()) nodes.add(entry.value());
            if (nodes.get(i) instanceof Sequence list) nodes.addAll(list.items());
        }
        return nodes;
    }

    /** @param countdown nodes still to pass before the one to change */
    private static Node mutate(Node node, int[] countdown, List<Node> all, SplittableRandom random) {
        if (countdown[0]-- == 0) return replacement(node, all, random);
        if (node instanceof Mapping mapping) {
            List<Entry> entries = new ArrayList<>();
            for (Entry entry : mapping.entries()) {
                boolean here = countdown[0] == 0;
                Node value = mutate(entry.value(), countdown, all, random);
                if (here && random.nextInt(3) == 0) continue;
                String key = here && random.nextInt(6) == 0 ? entry.key() + "x" : entry.key();
                entries.add(new Entry(key, entry.spot(), value));
            }
            return Mapping.of(mapping.spot(), entries);
        }
        if (node instanceof Sequence list) {
            List<Node> items = new ArrayList<>();
            for (Node item : list.items()) {
                boolean here = countdown[0] == 0;
                Node value = mutate(item, countdown, all, random);
                if (here && random.nextInt(3) == 0) continue;
                items.add(value);
                if (here && random.nextInt(3) == 0) items.add(item);
            }
            return Sequence.of(list.spot(), items);
        }
        return node;
    }

    private static Node replacement(Node node, List<Node> all, SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0 -> new Scalar(node.spot(), PIECES[random.nextInt(PIECES.length)].strip(), Node.Style.PLAIN);
            case 1 -> new Scalar(node.spot(), Double.toString(random.nextDouble(-10, 1000)), Node.Style.PLAIN);
            // The value of another field: of the right form, in the wrong place.
            default -> all.get(random.nextInt(all.size()));
        };
    }

    private static void write(Node node, YamlSink out) {
        if (node instanceof Mapping mapping) {
            out.beginMapping(Sink.Layout.BLOCK);
            for (Entry entry : mapping.entries()) {
                out.key(entry.key());
                write(entry.value(), out);
            }
            out.endMapping();
        } else if (node instanceof Sequence list) {
            out.beginList(Sink.Layout.BLOCK);
            for (Node item : list.items()) write(item, out);
            out.endList();
        } else if (node instanceof Scalar scalar) {
            if (scalar.isPlain()) out.number(scalar.text());
            else out.text(scalar.text());
        }
    }
}
