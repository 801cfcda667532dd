package tideover.command.keeping;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.engine.installation.Installation;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.FactId;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.files.survey.Things;
import tideover.papers.Wording;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.Privacy;

/** Photos and documents of one site in words, and the places where they may be. */
final class AttachmentLines {
    private static final int KILO = 1000;

    private final Desk desk;
    private final Things things;
    private final Wording wording;

    AttachmentLines(Desk desk, Site site) {
        this.desk = desk;
        this.things = new Things(site);
        this.wording = desk.wording().with(Installation.of(site));
    }

    /** An attachment in one line. */
    String line(Attachment one) {
        List<String> about = new ArrayList<>();
        about.add(wording.text("photos.size", PhraseArg.count((int) Math.max(1, one.sizeBytes() / KILO))));
        about.add(DateTimeFormatter.ISO_LOCAL_DATE
                .withZone(ZoneId.systemDefault())
                .format(one.entry().when()));
        if (one.privacy() == Privacy.PERSONAL) about.add(wording.text("photos.personal"));
        if (!one.entry().note().isEmpty()) about.add(one.entry().note());
        return desk.sentence(
                "attachments.line", one.id().text(), one.fileName(), place(one.place()), String.join(" · ", about));
    }

    private String place(String place) {
        if (place.isEmpty()) return wording.text("photos.site");
        String name = place.indexOf('.') < 0 ? wording.name(new ThingId(place)) : wording.fact(FactId.of(place));
        return desk.sentence("attachments.place", wording.capitalised(name), place);
    }

    /** @throws Refusal where the site has no such thing, or the thing no such fact */
    void requirePlace(String place) {
        int dot = place.indexOf('.');
        String thing = dot < 0 ? place : place.substring(0, dot);
        if (place.isEmpty() || place.equals(ThingId.MAIN_EARTH.text())) return;
        boolean there = ThingId.isWellFormed(thing)
                && things.find(new ThingId(thing))
                        .filter(stated -> dot < 0
                                || desk.fields()
                                        .find(stated.section() + place.substring(dot))
                                        .isPresent())
                        .isPresent();
        if (there) return;
        List<String> ids =
                things.all().stream().map(stated -> stated.id().text()).toList();
        throw new Refusal(List.of(desk.sentence("attachments.noPlace", place, String.join(", ", ids))));
    }

    /** The one that is meant, by its lasting name or that of its file. */
    Attachment require(String named, List<Attachment> all) {
        List<Attachment> meant = all.stream()
                .filter(one -> one.id().text().equals(named) || one.fileName().equals(named))
                .toList();
        if (meant.size() == 1) return meant.get(0);
        StringBuilder lines = new StringBuilder(
                desk.sentence(meant.isEmpty() ? "attachments.unknown" : "attachments.several", named));
        for (Attachment one : meant) lines.append(System.lineSeparator()).append(line(one));
        throw new Refusal(List.of(lines.toString()));
    }
}
