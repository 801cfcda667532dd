package tideover.web.sites;

import java.util.List;
import java.util.Map;
import tideover.web.page.Frame;

/**
 * What is done with a site beside working on it.
 *
 * @param address  of the variant
 * @param name     of the variant
 * @param site     designation of the site
 * @param variants all of the site
 * @param shelved  when it was put on the shelf, worded; empty while it is worked on
 * @param people   its customers
 * @param others   customers that it may be linked to
 * @param photos   how many photos and documents there are, worded
 * @param typed    what was typed and not taken, by field
 * @param problems why, by field
 */
public record Folder(
        Frame frame,
        String address,
        String name,
        String site,
        List<VariantLink> variants,
        String shelved,
        List<Person> people,
        List<Person> others,
        String photos,
        Map<String, String> typed,
        Map<String, String> problems) {
    public Folder {
        variants = List.copyOf(variants);
        people = List.copyOf(people);
        others = List.copyOf(others);
        typed = Map.copyOf(typed);
        problems = Map.copyOf(problems);
    }

    /**
     * Another variant, or this one.
     *
     * @param address of it
     * @param here    whether it is this one
     */
    public record VariantLink(String address, String name, Here here) {}

    /** Whether something is what the page shows. */
    public enum Here {
        YES,
        NO
    }

    /**
     * A customer.
     *
     * @param id   as it is sent
     * @param name as it is read
     */
    public record Person(String id, String name) {}

    /** What was typed, or what is there. */
    public String text(String field, String otherwise) {
        return typed.getOrDefault(field, otherwise);
    }

    /** Why it was not taken; empty where nothing was. */
    public String problem(String field) {
        return problems.getOrDefault(field, "");
    }
}
