package tideover.engine.site;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Copies of records with some components replaced: planned facts over found ones, and single edits. */
final class Overlay {

    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            return Shape.of(type);
        }
    };

    /** What is true of the place of a device and not of the device: it outlasts its exchange. */
    private static final Set<String> OF_THE_PLACE = Set.of(
            "id",
            "designation",
            "fedFrom",
            "neutralFrom",
            "conductors",
            "cable",
            "protection",
            "rcd",
            "room",
            "role",
            "at",
            "side",
            "neutralAt",
            "earthAt",
            "leadsTo",
            "isolates",
            "inverter",
            "inverters",
            "place",
            "earth",
            "measuringNeutralFrom",
            "measuringNeutralFuseA",
            "load",
            "importance",
            "stayOn");

    private Overlay() {}

    /** What is left of a device when another is put in its place: where and what it is. */
    static Thing placeOf(Thing device) {
        Shape shape = SHAPES.get(device.getClass());
        @Nullable Object[] values = new Object[shape.accessors.length];
        for (int i = 0; i < values.length; i++)
            if (OF_THE_PLACE.contains(shape.accessors[i].getName())) values[i] = shape.value(device, i);
        return shape.create(values);
    }

    /** Facts stated in {@code over} replace those of {@code under}; nested records likewise. */
    static <T> T of(T under, T over) {
        if (under.getClass() != over.getClass())
            throw new IllegalArgumentException("%s cannot become %s"
                    .formatted(under.getClass().getSimpleName(), over.getClass().getSimpleName()));
        Shape shape = SHAPES.get(under.getClass());
        @Nullable Object[] values = new Object[shape.accessors.length];
        for (int i = 0; i < values.length; i++) {
            Object below = shape.value(under, i);
            Object above = shape.value(over, i);
            values[i] = above == null
                    ? below
                    : below instanceof Record && above instanceof Record && !(above instanceof ThingId)
                            ? of(below, above)
                            : above;
        }
        return shape.create(values);
    }

    /** A copy with one field replaced; {@code field} may lead into nested records, which are made where missing. */
    static <T> T with(T record, String field, @Nullable Object value) {
        Shape shape = SHAPES.get(record.getClass());
        return shape.with(record, field, value);
    }

    /** The value of a field; {@code field} may lead into nested records. */
    static @Nullable Object value(Object record, String field) {
        int dot = field.indexOf('.');
        String name = dot < 0 ? field : field.substring(0, dot);
        Shape shape = SHAPES.get(record.getClass());
        for (int i = 0; i < shape.accessors.length; i++) {
            if (!shape.accessors[i].getName().equals(name)) continue;
            Object value = shape.value(record, i);
            return dot < 0 || value == null ? value : value(value, field.substring(dot + 1));
        }
        throw new IllegalArgumentException("%s has no field %s".formatted(shape.type.getSimpleName(), field));
    }

    /** The parts of a record type. */
    private static final class Shape {
        private final Class<?> type;
        private final Constructor<?> constructor;
        private final Method[] accessors;
        private final Class<?>[] types;

        private Shape(Class<?> type, Constructor<?> constructor, Method[] accessors, Class<?>[] types) {
            this.type = type;
            this.constructor = constructor;
            this.accessors = accessors;
            this.types = types;
        }

        static Shape of(Class<?> type) {
            RecordComponent[] components = Objects.requireNonNull(type.getRecordComponents(), type + " is no record");
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Method[] accessors =
                    Arrays.stream(components).map(RecordComponent::getAccessor).toArray(Method[]::new);
            try {
                Constructor<?> constructor = type.getDeclaredConstructor(types);
                // All are public anyway; this spares the question at each call.
                for (Method accessor : accessors) accessor.setAccessible(true);
                constructor.setAccessible(true);
                return new Shape(type, constructor, accessors, types);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(type + " has no canonical constructor", e);
            }
        }

        @Nullable
        Object value(Object record, int component) {
            try {
                return accessors[component].invoke(record);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("cannot read " + accessors[component], e);
            }
        }

        // The constructor is that of T.
        @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"})
        <T> T create(@Nullable Object[] values) {
            try {
                return (T) constructor.newInstance(values);
            } catch (InvocationTargetException e) {
                if (e.getCause() instanceof IllegalArgumentException refused) throw refused;
                throw new IllegalStateException("cannot make " + type, e);
            } catch (InstantiationException | IllegalAccessException e) {
                throw new IllegalStateException("cannot make " + type, e);
            }
        }

        @SuppressWarnings("TypeParameterUnusedInFormals")
        <T> T with(@Nullable Object record, String field, @Nullable Object value) {
            int dot = field.indexOf('.');
            String name = dot < 0 ? field : field.substring(0, dot);
            @Nullable Object[] values = new Object[accessors.length];
            boolean found = false;
            for (int i = 0; i < values.length; i++) {
                values[i] = record == null ? null : value(record, i);
                if (!accessors[i].getName().equals(name)) continue;
                found = true;
                values[i] = dot < 0 ? value : SHAPES.get(types[i]).with(values[i], field.substring(dot + 1), value);
            }
            if (!found) throw new IllegalArgumentException("%s has no field %s".formatted(type.getSimpleName(), field));
            return create(values);
        }
    }
}
