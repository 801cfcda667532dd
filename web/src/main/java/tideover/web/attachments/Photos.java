package tideover.web.attachments;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.FactId;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.files.FieldTable;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.MediaType;
import tideover.store.attachment.Privacy;
import tideover.web.attachments.PhotosSheet.Choice;
import tideover.web.attachments.PhotosSheet.Place;
import tideover.web.edit.EditWords;
import tideover.web.work.Frames;
import tideover.web.work.Work;

/** Makes lists of photos and documents. */
@Component
public final class Photos {
    private static final long KILO = 1000;

    private final Store store;
    private final Frames frames;
    private final FieldTable fields;

    Photos(Store store, Frames frames, FieldTable fields) {
        this.store = store;
        this.frames = frames;
        this.fields = fields;
    }

    /** All of a site. */
    PhotosSheet of(Work work, String at, List<String> problems, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        EditWords labels = new EditWords(fields, words, work.installation());
        List<Attachment> all = store.attachments().of(work.row().site());
        Map<String, List<Photo>> byPlace = new LinkedHashMap<>();
        for (Attachment one : all)
            byPlace.computeIfAbsent(one.place(), place -> new ArrayList<>()).add(photo(one, work, words));
        List<Place> places = new ArrayList<>();
        byPlace.forEach((place, photos) -> places.add(new Place(name(place, labels, words), way(place, work), photos)));
        return new PhotosSheet(
                frames.beside(request, words, work, words.text("photos.title")),
                work.address(),
                places,
                choices(work.site(), at, labels, words),
                at,
                words.text("photos.counted", PhraseArg.count(all.size())),
                problems);
    }

    /** Those at a thing or one of its facts. */
    public List<Photo> at(Work work, String thing, Wording words) {
        return store.attachments().of(work.row().site()).stream()
                .filter(one -> one.place().equals(thing) || one.place().startsWith(thing + "."))
                .map(one -> photo(one, work, words))
                .toList();
    }

    private static Photo photo(Attachment one, Work work, Wording words) {
        String address = work.address() + "/photos/" + one.id();
        List<String> about = new ArrayList<>();
        about.add(words.text("photos.size", PhraseArg.count((int) Math.max(1, one.sizeBytes() / KILO))));
        about.add(Frames.when(one.entry().when(), words.locale()));
        if (one.privacy() == Privacy.PERSONAL) about.add(words.text("photos.personal"));
        return new Photo(
                address + "/file",
                one.mediaType() == MediaType.PDF ? "" : address + "/picture",
                address + "/remove",
                one.fileName(),
                one.entry().note(),
                String.join(" · ", about));
    }

    private static String name(String place, EditWords labels, Wording words) {
        if (place.isEmpty()) return words.text("photos.site");
        return words.capitalised(place.indexOf('.') < 0 ? words.name(new ThingId(place)) : labels.label(place));
    }

    private static String way(String place, Work work) {
        if (place.isEmpty()) return "";
        int dot = place.indexOf('.');
        return work.address() + "/things/"
                + (dot < 0 ? place : place.substring(0, dot) + "#" + place.substring(dot + 1));
    }

    private static List<Choice> choices(Site site, String at, EditWords labels, Wording words) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", words.text("photos.site")));
        if (at.indexOf('.') > 0) choices.add(new Choice(at, words.capitalised(labels.label(at))));
        for (ThingId id : List.of(ThingId.SUPPLY, ThingId.GRID_OPERATOR, ThingId.MAIN_EARTH))
            choices.add(new Choice(id.text(), words.capitalised(words.name(id))));
        for (Thing thing : site.planned().values())
            choices.add(new Choice(thing.id().text(), words.name(thing.id())));
        if (choices.stream().noneMatch(choice -> choice.value().equals(at)))
            choices.add(new Choice(at, name(at, labels, words)));
        return choices;
    }

    /** Whether something may be attached there: a thing or a fact by its form. */
    static boolean isPlace(String place) {
        if (place.isEmpty() || ThingId.isWellFormed(place)) return true;
        try {
            FactId.of(place);
            return place.length() < 200;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
