package tideover.papers.handover;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.papers.Wording;

/**
 * XHTML with places to fill: <code>{name}</code> a component of the record at hand or of one around it, <code>{=key}</code> a
 * text of the bundles, <code>{each name}</code> … <code>{end}</code> once for each element of a list, in which <code>{it}</code> is
 * the element, <code>{if name}</code> … <code>{end}</code> where there is something. Whatever is filled in is escaped.
 */
final class Template {

    private static final Pattern PLACE = Pattern.compile("\\{(=|each |if |)([A-Za-z.]+)}");

    /** A part of a template: puts itself into a text. */
    private interface Part {
        void fill(StringBuilder text, Deque<Object> around, Wording wording);
    }

    private final List<Part> parts;

    private Template(List<Part> parts) {
        this.parts = parts;
    }

    /** The template in a file. @throws IllegalStateException if it is not on the class path or a block has no end */
    static Template in(String file) {
        return of(resource(file));
    }

    /** A file beside the templates. */
    static String resource(String file) {
        try (InputStream bytes = Template.class.getResourceAsStream(file)) {
            if (bytes == null) throw new IllegalStateException(file + " is not on the class path");
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    static Template of(String source) {
        Deque<List<Part>> open = new ArrayDeque<>();
        open.push(new ArrayList<>());
        Deque<String> blocks = new ArrayDeque<>();
        Matcher place = PLACE.matcher(source);
        int from = 0;
        while (place.find()) {
            literal(open, source.substring(from, place.start()));
            from = place.end();
            String kind = place.group(1).strip();
            String name = place.group(2);
            if (kind.isEmpty() && name.equals("end")) {
                if (blocks.isEmpty()) throw new IllegalStateException("a template ends a block that it does not begin");
                List<Part> inside = open.pop();
                open.element().add(block(blocks.pop(), inside));
            } else if (kind.equals("each") || kind.equals("if")) {
                blocks.push(kind + " " + name);
                open.push(new ArrayList<>());
            } else if (kind.equals("=")) {
                open.element().add((text, around, wording) -> text.append(escaped(wording.text(name))));
            } else {
                open.element().add((text, around, wording) -> text.append(escaped(string(value(name, around)))));
            }
        }
        literal(open, source.substring(from));
        if (!blocks.isEmpty()) throw new IllegalStateException("a template does not end " + blocks.peek());
        return new Template(List.copyOf(open.pop()));
    }

    private static void literal(Deque<List<Part>> open, String words) {
        if (!words.isEmpty()) open.element().add((text, around, wording) -> text.append(words));
    }

    private static Part block(String head, List<Part> inside) {
        String name = head.substring(head.indexOf(' ') + 1);
        if (head.startsWith("if "))
            return (text, around, wording) -> {
                if (isThere(value(name, around))) inside.forEach(part -> part.fill(text, around, wording));
            };
        return (text, around, wording) -> {
            for (Object element : (Collection<?>) value(name, around)) {
                around.push(element);
                inside.forEach(part -> part.fill(text, around, wording));
                around.pop();
            }
        };
    }

    /** The template filled from a record. @throws IllegalArgumentException if a name is not among its components */
    String fill(Object record, Wording wording) {
        StringBuilder text = new StringBuilder(1 << 16);
        Deque<Object> around = new ArrayDeque<>();
        around.push(record);
        parts.forEach(part -> part.fill(text, around, wording));
        return text.toString();
    }

    private static boolean isThere(@Nullable Object value) {
        if (value instanceof Collection<?> many) return !many.isEmpty();
        if (value instanceof Optional<?> some) return some.isPresent();
        return value != null && !string(value).isEmpty();
    }

    private static Object value(String name, Deque<Object> around) {
        if (name.equals("it")) return around.element();
        for (Object record : around) {
            if (!(record instanceof Record)) continue;
            try {
                Method component = record.getClass().getDeclaredMethod(name);
                return component.invoke(record);
            } catch (NoSuchMethodException e) {
                // Not of this one: look further out.
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("cannot read " + name + " of " + record.getClass(), e);
            }
        }
        throw new IllegalArgumentException("nothing is called " + name + " in "
                + around.element().getClass().getSimpleName());
    }

    private static String string(@Nullable Object value) {
        if (value instanceof Optional<?> some) return some.map(Object::toString).orElse("");
        return value == null ? "" : value.toString();
    }

    /** Text for XHTML: no sign of it can begin markup; signs that XML 1.0 does not know become spaces. */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(isXml(c) ? c : ' ');
            }
        });
        return escaped.toString();
    }

    private static boolean isXml(int c) {
        return c == '\t' || c == '\n' || c >= ' ' && c < 0xd800 || c >= 0xe000 && c < 0xfffe || c > 0xffff;
    }
}
