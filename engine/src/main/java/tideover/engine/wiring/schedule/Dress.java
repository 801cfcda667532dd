package tideover.engine.wiring.schedule;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.Cable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.InstallationMethod;
import tideover.engine.site.Material;
import tideover.engine.site.Meter;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.colour.ConductorColours;
import tideover.engine.wiring.colour.ConductorUse;

/** What conductors are made of: how they are laid, section, length, colour, ferrule. */
final class Dress {

    /** One conductor without its ends. */
    record Cut(
            Laying laying,
            ConductorColours.@Nullable Row colour,
            @Nullable Double crossSectionMm2,
            PowerRow.Basis basis,
            @Nullable Material material,
            @Nullable Double lengthM) {}

    private final Installation installation;
    private final WiringTables tables;
    private final Touched touched;
    private final @Nullable String country;

    Dress(Installation installation, WiringTables tables, Touched touched) {
        this.installation = installation;
        this.tables = tables;
        this.touched = touched;
        this.country = installation.site().house().place().country();
    }

    /** A conductor of a thing's supply cable; the run is all of them, lines in order. */
    Cut supply(Fed fed, Conductor conductor, List<Conductor> run) {
        Cable cable = fed.cable();
        if (cable == null) return new Cut(Laying.DIRECT, null, null, PowerRow.Basis.UNKNOWN, null, null);
        Laying laying = laying(fed, cable);
        Double crossSectionMm2 = crossSectionMm2(cable, conductor);
        return new Cut(
                laying,
                colour(laying == Laying.WIRE ? conductor : inCable(conductor, run), fed),
                crossSectionMm2,
                crossSectionMm2 == null ? PowerRow.Basis.UNKNOWN : PowerRow.Basis.STATED,
                cable.material(),
                cable.lengthM());
    }

    /** A conductor beside the supply cable of another thing, as thick as that; its length nobody has stated. */
    Cut beside(Thing thing, Conductor conductor, @Nullable ThingId path) {
        Fed fed = path == null ? null : installation.findFed(path).orElse(null);
        Cable cable = fed == null ? null : fed.cable();
        Double crossSectionMm2 = cable == null ? null : crossSectionMm2(cable, conductor);
        return new Cut(
                installation.status(thing.id()) == Status.NEW ? Laying.WIRE : Laying.EXISTING,
                colour(conductor, thing),
                crossSectionMm2,
                crossSectionMm2 == null ? PowerRow.Basis.UNKNOWN : PowerRow.Basis.LIKE_THE_PATH,
                cable == null ? null : cable.material(),
                null);
    }

    /** A measuring neutral; section and length are found on site. */
    Cut measuringNeutral(Meter meter) {
        return new Cut(Laying.WIRE, colour(Conductor.N, meter), null, PowerRow.Basis.UNKNOWN, null, null);
    }

    /** A bridge between two bars of one thing. */
    Cut bridge() {
        return new Cut(Laying.DIRECT, null, null, PowerRow.Basis.UNKNOWN, null, null);
    }

    private Laying laying(Fed fed, Cable cable) {
        if (!touched.isCableNew(fed)) return Laying.EXISTING;
        InstallationMethod method = cable.method();
        return method == InstallationMethod.A1 || method == InstallationMethod.B1 ? Laying.WIRE : Laying.CABLE;
    }

    private static @Nullable Double crossSectionMm2(Cable cable, Conductor conductor) {
        Double own = conductor == Conductor.N
                ? cable.neutralCrossSectionMm2()
                : conductor.isProtective() ? cable.protectiveCrossSectionMm2() : null;
        return own == null ? cable.crossSectionMm2() : own;
    }

    /** Cables for one line have the core of L1, whichever line it is connected to (HD 308 S2). */
    private static Conductor inCable(Conductor conductor, List<Conductor> run) {
        if (!conductor.isLine()) return conductor;
        int place = run.stream().filter(Conductor::isLine).toList().indexOf(conductor);
        return List.of(Conductor.L1, Conductor.L2, Conductor.L3).get(place);
    }

    private ConductorColours.@Nullable Row colour(Conductor conductor, Thing thing) {
        ConductorUse use = ConductorUse.of(conductor);
        boolean isNew = !(thing instanceof Fed fed) || touched.isCableNew(fed);
        Integer year = !isNew && thing instanceof Circuit circuit ? circuit.year() : null;
        return (year == null
                        ? tables.colours().find(country, use)
                        : tables.colours().find(country, use, year))
                .orElse(null);
    }

    /** What is pressed on, if the conductor is stranded. */
    @Nullable
    Ferrule ferrule(Cut cut, PowerEnd end) {
        if (!cut.laying().isNew() || cut.crossSectionMm2() == null || cut.material() == Material.ALUMINIUM) return null;
        return tables.ferrules()
                .find(cut.crossSectionMm2(), end.strippedLengthM())
                .orElse(null);
    }
}
