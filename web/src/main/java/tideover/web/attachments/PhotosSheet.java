package tideover.web.attachments;

import java.util.List;
import tideover.web.page.Frame;

/**
 * The photos and documents of a site, place by place.
 *
 * @param address  of the site
 * @param places   with something at them
 * @param choices  places where something may be added
 * @param at       the place suggested
 * @param counted  how many there are, worded
 * @param problems why a file was not taken; none where none was refused
 */
public record PhotosSheet(
        Frame frame,
        String address,
        List<Place> places,
        List<Choice> choices,
        String at,
        String counted,
        List<String> problems) {
    public PhotosSheet {
        places = List.copyOf(places);
        choices = List.copyOf(choices);
        problems = List.copyOf(problems);
    }

    /**
     * A place with what is at it.
     *
     * @param name as printed
     * @param way  address of its facts; empty for the site as a whole
     */
    public record Place(String name, String way, List<Photo> photos) {
        public Place {
            photos = List.copyOf(photos);
        }
    }

    /** A place that may be chosen. */
    public record Choice(String value, String words) {}
}
