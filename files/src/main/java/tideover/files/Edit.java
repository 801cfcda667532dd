package tideover.files;

import org.jspecify.annotations.Nullable;

/**
 * One change of one fact: what every page, paste, undo, command and program sends.
 *
 * <p>Paths are those of evidence and of variant files, with a side before them where it matters:
 *
 * <ul>
 *   <li>{@code oven.cable.lengthM}, a fact where it is stated last: as built, else in the plan, else as found
 *   <li>{@code house.oven.cable.lengthM}, {@code plan.oven.fedFrom}, {@code built.…}, a fact on that side; a planned
 *       value equal to the one found is no longer a change
 *   <li>{@code plan.circuits.oven}, a whole thing on that side; nothing before adds it, nothing after takes it out
 *   <li>{@code plan.removed.oven}, that the plan takes the thing out: {@code true} or nothing
 *   <li>{@code evidence.oven.cable.lengthM}, who or what says so: a mapping of origin, by, on and document
 *   <li>{@code accepted.oven.load.share}, the reason why advice of check {@code load.share} at {@code oven} is not followed
 * </ul>
 *
 * @param path   where
 * @param before what stood there when the change was thought of; nothing where nothing did. Texts, numbers and words as
 *               they are; lists and groups as JSON or YAML
 * @param after  what is to stand there; nothing forgets it
 */
public record Edit(
        String path, @Nullable String before, @Nullable String after) {}
