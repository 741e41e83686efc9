namespace LowVoltage.Calc.Ampacity;

/// <summary>The family of rules that a table or a factor belongs to. A factor fits the tables of its own family only.</summary>
public enum RuleSet
{
    /// <summary>United States law for petrol-engined recreational boats, 33 CFR 183 subpart I.</summary>
    Cfr33Part183,

    /// <summary>FAA advisory circular AC 43.13-1B chapter 11, aircraft wiring.</summary>
    FaaAc4313,

    /// <summary>NASA EEE-INST-002, spacecraft parts selection and derating.</summary>
    NasaEeeInst002,

    /// <summary>NASA MIL-STD-975M, the older spacecraft parts standard with the bundle formula.</summary>
    NasaMilStd975,

    /// <summary>NFPA 70, the National Electrical Code, article 310.</summary>
    Nec,

    /// <summary>IEC 60364-5-52, low-voltage installations in buildings.</summary>
    Iec60364,

    /// <summary>Road-vehicle cable tables after ISO 6722-3 and DIN VDE 0298-4.</summary>
    RoadVehicle,

    /// <summary>None of these: a table or a factor that the caller states. Published factors on such a table are a mix, which is reported.</summary>
    Caller,
}
