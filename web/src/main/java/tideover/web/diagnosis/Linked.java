package tideover.web.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** A sentence in which the things that it names lead to their facts. */
public record Linked(List<Part> parts) {
    public Linked {
        parts = List.copyOf(parts);
    }

    /**
     * A part of it.
     *
     * @param address of the facts of what it names; empty where it names nothing
     */
    public record Part(String text, String address) {}

    /**
     * A sentence with its names found.
     *
     * @param addresses by the names that may stand in it; of names that begin alike the longest is found
     */
    static Linked of(String text, Map<String, String> addresses) {
        List<String> names = addresses.keySet().stream()
                .filter(name -> !name.isBlank())
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
        List<Part> parts = new ArrayList<>();
        int told = 0;
        for (int i = 0; i < text.length(); ) {
            String found = find(text, i, names);
            if (found.isEmpty()) {
                i++;
                continue;
            }
            if (i > told) parts.add(new Part(text.substring(told, i), ""));
            told = i + found.length();
            parts.add(new Part(text.substring(i, told), addresses.getOrDefault(found, "")));
            i = told;
        }
        if (told < text.length()) parts.add(new Part(text.substring(told), ""));
        return new Linked(parts);
    }

    /** The name that stands at this place as a whole word; a sentence may begin with its capital. */
    private static String find(String text, int at, List<String> names) {
        if (at > 0 && Character.isLetterOrDigit(text.charAt(at - 1))) return "";
        for (String name : names) {
            int end = at + name.length();
            if (text.regionMatches(at == 0, at, name, 0, name.length())
                    && (end == text.length() || !Character.isLetterOrDigit(text.charAt(end)))) return name;
        }
        return "";
    }

    /** The same, with a link behind it to each of these that is not linked yet. */
    Linked and(Map<String, String> addresses) {
        List<Part> all = new ArrayList<>(parts);
        addresses.forEach((name, address) -> {
            if (all.stream().anyMatch(part -> part.address().equals(address))) return;
            all.add(new Part(" · ", ""));
            all.add(new Part(name, address));
        });
        return new Linked(all);
    }
}
