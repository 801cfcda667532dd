package tideover.web.facts;

import java.util.List;
import tideover.web.attachments.Photo;
import tideover.web.edit.Outcome;
import tideover.web.facts.FactRow.Choice;
import tideover.web.note.Note;
import tideover.web.page.Frame;

/**
 * All facts of one thing.
 *
 * @param address of the site
 * @param base    number of the revision
 * @param id      of the thing
 * @param name    as printed
 * @param kind    of thing, and what becomes of it, worded
 * @param sides   which columns there are
 * @param groups  its facts
 * @param origins who may say so
 * @param notes   what the program notes of it, what is met last
 * @param photos  at it or one of its facts
 * @param ways    what else can be done with it
 * @param last    what came of the last change
 */
public record ThingSheet(
        Frame frame,
        String address,
        long base,
        String id,
        String name,
        String kind,
        Sides sides,
        List<Group> groups,
        List<Choice> origins,
        List<Note> notes,
        List<Photo> photos,
        List<Way> ways,
        Outcome last) {
    public ThingSheet {
        groups = List.copyOf(groups);
        origins = List.copyOf(origins);
        notes = List.copyOf(notes);
        photos = List.copyOf(photos);
        ways = List.copyOf(ways);
    }

    /** How many findings here are met. */
    public int met() {
        return (int) notes.stream().filter(note -> note.look().equals("met")).count();
    }

    /** Which columns there are. */
    public enum Sides {
        HOUSE,
        PLAN,
        BOTH
    }

    /**
     * Facts that belong together.
     *
     * @param field   of the group; empty for facts in none
     * @param heading empty for facts in none
     */
    public record Group(String field, String heading, List<FactRow> rows) {
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Something that is done with the thing as a whole.
     *
     * @param words what it does
     * @param path  of the edit
     * @param was   what stands there
     * @param typed what is to stand there; empty takes it out
     * @param back  where to go on
     */
    public record Way(String words, String path, String was, String typed, String back) {}
}
