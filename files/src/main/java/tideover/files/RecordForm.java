package tideover.files;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A record of the site and the rows of the field table that belong to its components. */
final class RecordForm {
    private final Class<?> type;
    private final Constructor<?> constructor;
    private final Map<String, Part> parts;

    private RecordForm(Class<?> type, Constructor<?> constructor, Map<String, Part> parts) {
        this.type = type;
        this.constructor = constructor;
        this.parts = parts;
    }

    /**
     * One component.
     *
     * @param index   place in the constructor
     * @param field   its row
     * @param element type of the value, or of one value in the list
     * @param nested  form of the group, or of one group in the list
     */
    record Part(
            int index,
            String name,
            Field field,
            Class<?> element,
            @Nullable RecordForm nested,
            Method accessor) {
        /** Its value in a record; nothing where it is missing. */
        @Nullable
        Object of(Object record) {
            try {
                return accessor.invoke(record);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("cannot read " + accessor, e);
            }
        }

        /** The form of the group; only for groups. */
        RecordForm requireNested() {
            if (nested == null) throw new IllegalStateException(field.path() + " is no group");
            return nested;
        }
    }

    static RecordForm of(Class<?> type, String path, FieldTable table) {
        RecordComponent[] components = type.getRecordComponents();
        Map<String, Part> parts = new LinkedHashMap<>();
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            RecordComponent component = components[i];
            types[i] = component.getType();
            Field field = table.requireRow(path + "." + component.getName());
            Class<?> element = element(component);
            boolean group = field.kind() == FieldKind.GROUP || field.kind() == FieldKind.GROUPS;
            RecordForm nested = group ? of(element, field.path(), table) : null;
            parts.put(
                    component.getName(),
                    new Part(i, component.getName(), field, element, nested, component.getAccessor()));
        }
        try {
            return new RecordForm(type, type.getDeclaredConstructor(types), parts);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(type + " has no canonical constructor", e);
        }
    }

    private static Class<?> element(RecordComponent component) {
        if (component.getType() != List.class) return component.getType();
        ParameterizedType list = (ParameterizedType) component.getGenericType();
        return (Class<?>) list.getActualTypeArguments()[0];
    }

    /** In the order of the record. */
    Collection<Part> parts() {
        return parts.values();
    }

    Optional<Part> find(String name) {
        return Optional.ofNullable(parts.get(name));
    }

    Collection<String> names() {
        return parts.keySet();
    }

    /** The row of a field inside; the path may lead into groups. */
    Optional<Field> findField(String path) {
        return findPart(path).map(Part::field);
    }

    /** A component inside; the path may lead into groups. */
    Optional<Part> findPart(String path) {
        int dot = path.indexOf('.');
        Part part = parts.get(dot < 0 ? path : path.substring(0, dot));
        if (part == null || dot < 0) return Optional.ofNullable(part);
        return part.nested() == null ? Optional.empty() : part.nested().findPart(path.substring(dot + 1));
    }

    /** A record of these values, in the order of {@link #parts()}. */
    Object create(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InstantiationException | IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot make " + type, e);
        }
    }

    void addFields(List<Field> all) {
        for (Part part : parts.values()) {
            all.add(part.field());
            if (part.nested() != null) part.nested().addFields(all);
        }
    }

    /** Paths of all fields inside, for a message that lists what is allowed. */
    List<String> fieldPaths() {
        List<String> paths = new ArrayList<>();
        addPaths("", paths);
        return paths;
    }

    private void addPaths(String prefix, List<String> paths) {
        for (Part part : parts.values()) {
            paths.add(prefix + part.name());
            if (part.field().kind() == FieldKind.GROUP)
                part.requireNested().addPaths(prefix + part.name() + ".", paths);
        }
    }
}
