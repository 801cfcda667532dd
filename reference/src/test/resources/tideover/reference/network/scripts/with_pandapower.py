"""Reference cases solved by pandapower: balanced load flow in the positive sequence, short circuits after IEC 60909.

In a flow only L1 is told: the others are it, turned. In a fault the tool gives magnitudes, takes its own voltage factors
(c 1.05 largest and 0.95 smallest, for a tolerance of 6 %), and for the smallest heats the conductors itself
(IEC 60909-0, equation for R_L at the end temperature: 0.004 per kelvin from 20 degrees Celsius).
"""

import cmath
import math

import pandapower as pp
import pandapower.shortcircuit as sc

import three_wire
from elements import current, magnitude, number, voltage

RATED_V = 230.0 * math.sqrt(3)
BASE_MVA = 0.01
PER_KELVIN = 0.004


def version():
    return pp.__version__


def balanced_loads(case):
    """Loads alike on all lines of a place, as one three-phase load: to the neutral, or from line to line."""
    groups = {}
    for one in case["loads"]:
        place = one["from"].split(".")[0]
        law = (one["powerShare"], one["currentShare"], one["impedanceShare"])
        groups.setdefault((place, law, one["voltageV"]), []).append(one)
    for (place, law, _), ones in groups.items():
        three_wire.same([complex(one["powerW"], one["reactiveVar"]) for one in ones], f"loads of {place}")
        if len(ones) % 3:
            raise three_wire.Refused(f"{len(ones)} loads at {place}")
        yield place, law, sum(one["powerW"] for one in ones), sum(one["reactiveVar"] for one in ones)


def network(case, temperature=None):
    net = pp.create_empty_network(f_hz=50.0, sn_mva=BASE_MVA)
    buses = {place: pp.create_bus(net, vn_kv=RATED_V / 1000, name=place) for place in three_wire.places(case)}
    heat = 1 + PER_KELVIN * (temperature - 20) if temperature is not None else 1
    lines = {}
    for run in case["runs"]:
        one, zero = three_wire.sequences(run)
        lines[run["id"]] = pp.create_line_from_parameters(
            net, buses[run["from"][0].split(".")[0]], buses[run["to"][0].split(".")[0]], length_km=1.0,
            r_ohm_per_km=one.real / heat, x_ohm_per_km=one.imag, c_nf_per_km=0, max_i_ka=1,
            r0_ohm_per_km=zero.real / heat, x0_ohm_per_km=zero.imag, c0_nf_per_km=0)
        if temperature is not None:
            net.line.loc[lines[run["id"]], "endtemp_degree"] = temperature
    return net, buses, lines


def flow(case):
    net, buses, lines = network(case)
    inner = {}
    for place, (z, emf, ids) in three_wire.sources(case).items():
        bus = buses[place]
        if z:
            # The source's impedance is a line from a bus where the voltage is fixed.
            bus = pp.create_bus(net, vn_kv=RATED_V / 1000)
            inner[ids[0]] = pp.create_line_from_parameters(
                net, bus, buses[place], length_km=1.0, r_ohm_per_km=z.real, x_ohm_per_km=z.imag, c_nf_per_km=0, max_i_ka=1)
        pp.create_ext_grid(net, bus, vm_pu=abs(emf) * math.sqrt(3) / RATED_V, va_degree=math.degrees(cmath.phase(emf)))
    for place, (_, steady, impedance), w, var in balanced_loads(case):
        pp.create_load(net, buses[place], p_mw=w / 1e6, q_mvar=var / 1e6,
                       const_z_p_percent=impedance * 100, const_i_p_percent=steady * 100,
                       const_z_q_percent=impedance * 100, const_i_q_percent=steady * 100)
    pp.runpp(net, tolerance_mva=1e-12, max_iteration=200, calculate_voltage_angles=True, numba=False)
    rows = []
    for place, bus in buses.items():
        row = net.res_bus.loc[bus]
        rows.append(voltage(f"{place}.L1", cmath.rect(row.vm_pu * RATED_V / math.sqrt(3), math.radians(row.va_degree))))
    for kind, named in (("run", {id + "/1": index for id, index in lines.items()}), ("source", inner)):
        for id, index in named.items():
            row = net.res_line.loc[index]
            star = cmath.rect(row.vm_from_pu * RATED_V / math.sqrt(3), math.radians(row.va_from_degree))
            power = complex(row.p_from_mw, row.q_from_mvar) * 1e6 / 3
            rows.append(current(kind, id, (power / star).conjugate()))
    return rows


def fault(case):
    facts = case["iec60909"]
    largest = facts["case"] == "max"
    net, buses, _ = network(case, None if largest else facts["endTempDegC"])
    factor = facts["c"]
    for place, (z, _, _) in three_wire.sources(case).items():
        power = factor * RATED_V**2 / abs(z) / 1e6
        ratio = z.real / z.imag
        pp.create_ext_grid(net, buses[place], s_sc_max_mva=power, s_sc_min_mva=power, rx_max=ratio, rx_min=ratio,
                           x0x_max=1.0, r0x0_max=ratio)
        if not largest:
            net.ext_grid["x0x_min"], net.ext_grid["r0x0_min"] = 1.0, ratio
    ends = {end.split(".")[1] for one in case["shorts"] for end in (one["from"], one["to"]) if "." in end}
    kind = {1: "1ph", 2: "2ph", 3: "3ph"}[len(ends & {"L1", "L2", "L3"})]
    one = case["shorts"][0]
    sc.calc_sc(net, fault=kind, case=facts["case"], bus=buses[one["from"].split(".")[0]], lv_tol_percent=6,
               r_fault_ohm=number(one["ohm"]).real, x_fault_ohm=0.0)
    value = float(net.res_bus_sc.ikss_ka.iloc[0]) * 1000
    return [magnitude("short", short["id"], value) for short in case["shorts"]]


def solve(case):
    return fault(case) if case["kind"] == "fault" else flow(case)
