package tideover.web.handover;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Phrase;
import tideover.engine.site.OperatingState;
import tideover.files.FieldTable;
import tideover.files.SiteWriter;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.handover.Handover;
import tideover.papers.handover.OperatorLetter;
import tideover.papers.handover.TerminalPaper;
import tideover.papers.handover.WiringPaper;
import tideover.papers.json.AssessmentJson;
import tideover.papers.json.NetworkJson;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.ListingCsv;
import tideover.papers.wiring.WiringData;
import tideover.papers.wiring.WiringPart;
import tideover.web.diagram.States;
import tideover.web.jobs.JobFile;
import tideover.web.jobs.JobResult;
import tideover.web.jobs.Progress;
import tideover.web.jobs.Task;
import tideover.web.network.NetworkData;
import tideover.web.page.Download;
import tideover.web.wiring.WiringSources;
import tideover.web.work.Stamps;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Makes the papers of a site, one after the other, and all of it as one file. */
@Component
final class PaperMaking {
    private static final MediaType ZIP = MediaType.parseMediaType("application/zip");
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");

    /** More sheets than this nobody compares. */
    private static final int MOST_CURVES = 6;

    private final Works works;
    private final WiringSources wiring;
    private final NetworkData network;
    private final Stamps stamps;
    private final SiteWriter writer;

    PaperMaking(Works works, WiringSources wiring, NetworkData network, Stamps stamps, FieldTable fields) {
        this.works = works;
        this.wiring = wiring;
        this.network = network;
        this.stamps = stamps;
        this.writer = new SiteWriter(fields);
    }

    /** One part of the work, for its progress. */
    private enum Part {
        JUDGING,
        WIRING_LISTS,
        HANDOVER,
        LETTER,
        WIRING,
        TERMINALS,
        DATA,
        ALL
    }

    Task of(Work work, Wording words) {
        Stamp stamp = stamps.of(work);
        return progress -> make(work, words, stamp, progress);
    }

    private JobResult make(Work work, Wording words, Stamp stamp, Progress progress) {
        List<JobFile> papers = new ArrayList<>();
        List<JobFile> data = new ArrayList<>();
        tell(progress, Part.JUDGING);
        Assessment assessment = works.explained(work);
        tell(progress, Part.WIRING_LISTS);
        WiringData lists = wiring.of(work, words);
        List<Listing> usual = listings(WiringPart.USUAL, lists);
        TerminalDrawing terminals = wiring.terminals(work, lists);
        Handover handover = Handover.of(assessment, words, stamp)
                .with(works.assessor().curves(assessment).ofStayingCircuits(MOST_CURVES))
                .withWiring(listings(WiringPart.OF_HANDOVER, lists))
                .with(terminals);
        tell(progress, Part.HANDOVER);
        papers.add(paper("handover", handover.pdf()));
        tell(progress, Part.LETTER);
        papers.add(paper("letter", OperatorLetter.of(assessment, words, stamp).pdf()));
        tell(progress, Part.WIRING);
        papers.add(paper("wiring", new WiringPaper(usual, lists.wording(), stamp).pdf()));
        tell(progress, Part.TERMINALS);
        if (!terminals.sheets().isEmpty())
            papers.add(paper("terminals", new TerminalPaper(terminals, lists.wording(), stamp).pdf()));
        tell(progress, Part.DATA);
        data.add(JobFile.text(
                "findings.json",
                MediaType.APPLICATION_JSON,
                new AssessmentJson(words, assessment, stamp.revision()).text()));
        data.add(JobFile.text("site.json", MediaType.APPLICATION_JSON, writer.canonicalJson(work.site())));
        data.add(JobFile.text(
                "network.json", MediaType.APPLICATION_JSON, new NetworkJson(network.of(work, words)).text()));
        for (OperatingState state : assessment.installation().states())
            data.add(JobFile.text(
                    "diagram-" + States.path(state) + ".svg",
                    SVG,
                    handover.diagram().in(state).svg()));
        for (Listing listing : usual)
            data.add(JobFile.text("wiring-" + listing.part() + ".csv", JobFile.CSV, ListingCsv.of(listing)));
        tell(progress, Part.ALL);
        papers.add(JobFile.of(Download.name(work.row().designation(), "site") + ".zip", ZIP, zip(papers, data, stamp)));
        return new JobResult(papers, List.of());
    }

    private static void tell(Progress progress, Part part) {
        progress.tell(part.ordinal(), Part.values().length, Phrase.of("job.papers." + part.name()));
    }

    private static JobFile paper(String name, byte[] pdf) {
        return JobFile.of(name + ".pdf", MediaType.APPLICATION_PDF, pdf);
    }

    private static List<Listing> listings(List<WiringPart> parts, WiringData wiring) {
        return parts.stream().flatMap(part -> part.of(wiring).stream()).toList();
    }

    /** The day of the stamp in place of the clock: the same papers give the same file. */
    private static byte[] zip(List<JobFile> papers, List<JobFile> data, Stamp stamp) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (List<JobFile> files : List.of(papers, data))
                for (JobFile file : files) {
                    ZipEntry entry = new ZipEntry(file.name());
                    entry.setTimeLocal(stamp.date().atTime(LocalTime.NOON));
                    zip.putNextEntry(entry);
                    zip.write(file.bytes());
                    zip.closeEntry();
                }
        } catch (IOException e) {
            throw new UncheckedIOException("a file in memory cannot be written", e);
        }
        return bytes.toByteArray();
    }
}
