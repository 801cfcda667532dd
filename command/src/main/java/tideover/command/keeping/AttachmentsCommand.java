package tideover.command.keeping;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.command.kept.KeptVariant;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.Attachments;
import tideover.store.attachment.Privacy;

/** Photos and documents of a kept site: listed, added, written out, taken away. */
@Command(name = "attachments", resourceBundle = "tideover.command.help", sortOptions = false)
public final class AttachmentsCommand extends KeptCommand {
    @Parameters(paramLabel = "SITE", arity = "1", descriptionKey = "keeping.site")
    private String named = "";

    @Option(names = "--at", paramLabel = "PLACE", descriptionKey = "attachments.at")
    private @Nullable String at;

    @Option(names = "--add", paramLabel = "FILE", descriptionKey = "attachments.add")
    private @Nullable Path add;

    @Option(names = "--personal", descriptionKey = "attachments.personal")
    private boolean personal;

    @Option(names = "--note", paramLabel = "TEXT", descriptionKey = "attachments.note")
    private @Nullable String note;

    @Option(names = "--write", paramLabel = "ATTACHMENT", descriptionKey = "attachments.write")
    private @Nullable String write;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            descriptionKey = "attachments.output")
    private @Nullable Path output;

    @Option(names = "--remove", paramLabel = "ATTACHMENT", descriptionKey = "attachments.remove")
    private @Nullable String remove;

    public AttachmentsCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        refuseWhatDoesNotGoTogether();
        KeptVariant variant = require(keeping, named);
        AttachmentLines lines = new AttachmentLines(desk, keeping.site(variant, null));
        if (at != null) lines.requirePlace(at);
        if (add != null) {
            Attachment added = keeping.attachments()
                    .add(
                            variant,
                            at == null ? "" : at,
                            String.valueOf(add.getFileName()),
                            bytes(add),
                            personal ? Privacy.PERSONAL : Privacy.ORDINARY,
                            note == null ? "" : note);
            desk.out().println(lines.line(added));
            return Status.DONE;
        }
        List<Attachment> all = keeping.attachments().of(variant);
        if (write != null) {
            Attachment meant = lines.require(write, all);
            writeOut(meant, keeping.attachments().content(meant));
        } else if (remove != null) {
            Attachment meant = lines.require(remove, all);
            keeping.attachments().remove(meant);
            desk.out().println(desk.sentence("attachments.removed", meant.fileName()));
        } else {
            list(all, lines);
        }
        return Status.DONE;
    }

    private void refuseWhatDoesNotGoTogether() {
        List<String> problems = new ArrayList<>();
        if (Stream.of(add, write, remove).filter(action -> action != null).count() > 1)
            problems.add(desk.sentence("attachments.oneAtATime"));
        if (add == null && (personal || note != null)) problems.add(desk.sentence("attachments.saidOfWhat"));
        if (write == null && output != null) problems.add(desk.sentence("attachments.outputOfWhat"));
        if (at != null && (write != null || remove != null)) problems.add(desk.sentence("attachments.atWithWhat"));
        if (!problems.isEmpty()) throw new Refusal(problems);
    }

    private void list(List<Attachment> all, AttachmentLines lines) {
        List<Attachment> shown = all.stream()
                .filter(one -> at == null
                        || one.place().equals(at)
                        || !at.isEmpty() && one.place().startsWith(at + "."))
                .toList();
        shown.forEach(one -> desk.out().println(lines.line(one)));
        if (shown.isEmpty()) desk.say("attachments.none");
    }

    /** All of it, or one byte more than is ever kept: then whoever keeps it says that it is too large. */
    private byte[] bytes(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(Attachments.LARGEST_BYTES + 1);
        } catch (NoSuchFileException e) {
            throw new Refusal(List.of(desk.sentence("problem.fileMissing", file.toString())));
        } catch (IOException e) {
            String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            throw new Refusal(List.of(desk.sentence("problem.fileUnreadable", file.toString(), why)));
        }
    }

    /** Where nobody said where, never over a file that is there. */
    private void writeOut(Attachment meant, byte[] content) {
        Path file = output == null ? Path.of(meant.fileName()) : output;
        if (Files.isDirectory(file)) file = file.resolve(meant.fileName());
        if (!file.equals(output) && Files.exists(file))
            throw new Refusal(List.of(desk.sentence("attachments.thereAlready", file.toString())));
        desk.write(file, content);
        desk.out().println(file);
    }
}
