namespace Scribeline.Engine.Questions;

/// <summary>What a value measures; the SI unit it is held in stands beside each.</summary>
public enum Unit
{
    /// <summary>A plain ratio.</summary>
    Ratio,

    /// <summary>A share, held as 0 to 1 and shown in per cent.</summary>
    Share,

    /// <summary>Body diameters.</summary>
    Calibre,

    /// <summary>A count of things.</summary>
    Count,

    /// <summary>Length of a part, m; shown in mm or inch.</summary>
    Length,

    /// <summary>Height or distance, m; shown in m or ft.</summary>
    Height,

    /// <summary>kg.</summary>
    Mass,

    /// <summary>Mass of a charge or of a mix, kg; shown in g.</summary>
    Powder,

    /// <summary>kg·m².</summary>
    Inertia,

    /// <summary>s.</summary>
    Time,

    /// <summary>Time of work or waiting, s; shown in minutes, hours or days.</summary>
    WorkTime,

    /// <summary>m² of a face; shown in cm² or square inches.</summary>
    Area,

    /// <summary>m³ of something mixed or poured; shown in cm³ or cubic inches.</summary>
    Volume,

    /// <summary>m/s.</summary>
    Speed,

    /// <summary>Mach number.</summary>
    Mach,

    /// <summary>m/s²; shown in multiples of standard gravity too.</summary>
    Acceleration,

    /// <summary>N.</summary>
    Force,

    /// <summary>Pa.</summary>
    Pressure,

    /// <summary>J.</summary>
    Energy,

    /// <summary>rad; shown in degrees.</summary>
    Angle,

    /// <summary>Hz.</summary>
    Frequency,

    /// <summary>K; shown in °C or °F.</summary>
    Temperature,

    /// <summary>kg/m³.</summary>
    Density,

    /// <summary>N·s.</summary>
    Impulse,

    /// <summary>Bending stiffness EI, N·m².</summary>
    Stiffness,
}
