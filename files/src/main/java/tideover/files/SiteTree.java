package tideover.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Spot;
import tideover.files.yaml.YamlProblem;
import tideover.files.yaml.YamlResult;
import tideover.files.yaml.YamlText;

/** From a path or bytes to the tree of a whole site; a variant is laid over its base on the way. */
final class SiteTree {
    private static final int LONGEST_CHAIN = 8;

    private final Problems problems;
    private final List<Path> chain = new ArrayList<>();

    SiteTree(Problems problems) {
        this.problems = problems;
    }

    @Nullable
    Mapping read(Path file) {
        return read(file, Spot.whole(file.toString()));
    }

    @Nullable
    Mapping read(String name, byte[] bytes) {
        Mapping root = parse(name, bytes);
        if (root == null) return null;
        Node base = root.find(SiteKeys.VARIANT_OF).orElse(null);
        if (base == null) return root;
        problems.add(base.spot(), SiteKeys.VARIANT_OF, ProblemKind.VARIANT_WITHOUT_FOLDER);
        return null;
    }

    /** @param named where the file is asked for: the variant's line, or the file itself */
    private @Nullable Mapping read(Path file, Spot named) {
        byte[] bytes = bytes(file, named);
        Mapping root = bytes == null ? null : parse(file.toString(), bytes);
        if (root == null) return null;
        Node variantOf = root.find(SiteKeys.VARIANT_OF).orElse(null);
        if (variantOf == null) return root;
        Path base = base(file, variantOf);
        if (base == null) return null;
        chain.add(file.toAbsolutePath().normalize());
        if (chain.contains(base.toAbsolutePath().normalize())) {
            problems.add(variantOf.spot(), SiteKeys.VARIANT_OF, ProblemKind.VARIANT_OF_ITSELF, base.toString());
            return null;
        }
        if (chain.size() > LONGEST_CHAIN) {
            problems.add(
                    variantOf.spot(), SiteKeys.VARIANT_OF, ProblemKind.VARIANT_CHAIN, Integer.toString(LONGEST_CHAIN));
            return null;
        }
        Mapping below = read(base, variantOf.spot());
        return below == null ? null : Variant.over(below, root, problems);
    }

    private @Nullable Path base(Path file, Node variantOf) {
        if (variantOf instanceof Scalar scalar && !scalar.text().isBlank()) {
            try {
                return file.resolveSibling(scalar.text()).normalize();
            } catch (InvalidPathException e) {
                // Said below.
            }
        }
        problems.add(variantOf.spot(), SiteKeys.VARIANT_OF, ProblemKind.VALUE_EXPECTED, SiteKeys.VARIANT_OF);
        return null;
    }

    private byte @Nullable [] bytes(Path file, Spot named) {
        String name = ValueReader.shortened(file.toString());
        if (Files.isDirectory(file)) {
            problems.add(named, "", ProblemKind.FILE_IS_FOLDER, name);
        } else if (Files.exists(file) && !Files.isRegularFile(file)) {
            // A device or a pipe might never end.
            problems.add(named, "", ProblemKind.FILE_IS_SPECIAL, name);
        } else {
            try (InputStream in = Files.newInputStream(file)) {
                return in.readNBytes(YamlText.LARGEST_BYTES + 1);
            } catch (NoSuchFileException e) {
                problems.add(named, "", ProblemKind.FILE_MISSING, name);
            } catch (AccessDeniedException e) {
                problems.add(named, "", ProblemKind.FILE_NOT_ALLOWED, name);
            } catch (IOException e) {
                problems.add(named, "", ProblemKind.FILE_UNREADABLE, name, String.valueOf(e.getMessage()));
            }
        }
        return null;
    }

    private @Nullable Mapping parse(String name, byte[] bytes) {
        YamlResult result = YamlText.read(name, bytes);
        for (YamlProblem problem : result.problems()) problems.add(InputProblem.of(problem));
        Node root = result.root();
        if (root == null) return null;
        if (!(root instanceof Mapping mapping)) {
            problems.add(root.spot(), "", ProblemKind.MAPPING_EXPECTED, name, FormReader.found(root));
            return null;
        }
        return isOurFormat(mapping) ? mapping : null;
    }

    /** A file of another format would only yield a list of unknown keys. */
    private boolean isOurFormat(Mapping root) {
        String known = Integer.toString(SiteKeys.FORMAT_VERSION);
        Node format = root.find(SiteKeys.FORMAT).orElse(null);
        if (format == null) {
            problems.add(root.spot(), SiteKeys.FORMAT, ProblemKind.FORMAT_MISSING, known);
        } else if (!(format instanceof Scalar scalar)
                || !scalar.isPlain()
                || !scalar.text().equals(known)) {
            problems.add(format.spot(), SiteKeys.FORMAT, ProblemKind.FORMAT_OTHER, FormReader.found(format), known);
        } else {
            return true;
        }
        return false;
    }
}
