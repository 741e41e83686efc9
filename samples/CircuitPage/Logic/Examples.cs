namespace CircuitPage;

/// <summary>Circuits to start from. All are invented: no such vehicle, boat or bench exists.</summary>
internal static class Examples
{
    public static IReadOnlyList<(string Title, string Address)> All { get; } =
    [
        ("a reading lamp in a van", "circuit=Invented+example:+reading+lamp&practice=road+vehicle&supply=lead-acid&cold_cranking_A=600&load=lamp&load_W=21&load_rated_V=12&feed_m=4&return=wire&joints_mOhm=6&ambient_degC=35&loaded_conductors=4&insulation=PVC&supply_lead_mOhm=12"),
        ("a cooler, back through the chassis", "circuit=Invented+example:+cooler&practice=road+vehicle&supply=lead-acid&cold_cranking_A=600&load=power&load_W=55&efficiency_percent=90&feed_m=5.5&return=chassis&chassis_mOhm=3&joints_mOhm=8&ambient_degC=50&loaded_conductors=6&insulation=class+B&supply_lead_mOhm=12&load_min_V=9"),
        ("a bilge pump in a launch, US units", "units=us&circuit=Invented+example:+bilge+pump&practice=small+craft&supply=lead-acid&cold_cranking_A=400&load=motor&load_A=5&start_A=14&locked_A=18&start_s=0.3&thermal_cut_out=yes&feed_ft=13&return=wire&joints_mOhm=6&ambient_degF=122&loaded_conductors=4&insulation=rated&rated_degF=221&short_circuit_degF=320&supply_lead_mOhm=11&engine_space=yes&fuse_distance_ft=2.6&fuse_lead_sheathed=yes&drop_limit_percent=5"),
        ("a 48 V pack with a main fuse", "circuit=Invented+example:+pump+on+a+48+V+pack&practice=bench&supply=LiFePO4&cells_in_series=16&capacity_Ah=100&load=power&load_W=400&efficiency_percent=92&feed_m=3&return=wire&joints_mOhm=4&ambient_degC=30&insulation=XLPE&supply_lead_mOhm=2.34&fuses=IEC+60269-2+gG,+250+V&main_fuse=IEC+60269-2+gG,+250+V&main_fuse_A=63&main_fuse_lead_mOhm=0&main_lead_size=25&main_lead_m=1.5&main_fuse_melts_A2s=9000"),
        ("too much power too far away: nothing passes", "circuit=Invented+example:+kettle+inverter&practice=road+vehicle&supply=LiFePO4&cells_in_series=4&capacity_Ah=200&load=power&load_W=1800&efficiency_percent=90&feed_m=6&return=wire&joints_mOhm=2&ambient_degC=35&insulation=XLPE&supply_lead_mOhm=8"),
        ("a socket whose supply lead is not known: undetermined", "circuit=Invented+example:+spare+socket&practice=road+vehicle&supply=lead-acid&cold_cranking_A=600&load=current&load_A=6&feed_m=2&return=wire&joints_mOhm=4&ambient_degC=40&insulation=class+B"),
    ];
}
