using CanvasCut.Design;

namespace CanvasCut.Checks;

/// <summary>How much a panel weighs for its stiffness: all that its own weight does to its shape follows from that.</summary>
internal static class PanelStiffness
{
    /// <summary>Of a panel whose mass is not given; from memory, 2 to 4 kg/m² for panels with crystalline cells.</summary>
    private const double MassPerSquareMetre = 3;

    /// <summary>The modulus of a laminate of plastic films and cells, taken low so that it hangs more; from memory.</summary>
    private const double ModulusMpa = 3000;

    /// <summary>Standard gravity, m/s²; ISO 80000-3.</summary>
    private const double Gravity = 9.80665;

    /// <summary>
    /// Weight a length over EI, in 1/mm³. From a droop d over an overhang a it is 8d/a⁴ (Roark, table 8.1, case 2a, a beam
    /// held at one end); else from mass, thickness and modulus with EI = Et³/12 a unit of width.
    /// </summary>
    public static double WeightPerMm3(CarrierJob job)
    {
        var body = job.Panel.Body;
        if (body.Droop is { } droop)
        {
            return 8 * droop.Drop.Millimeters / Math.Pow(droop.Overhang.Millimeters, 4);
        }

        var area = body.Length.Meters * body.Width.Meters;
        var newtonsPerSquareMm = (body.Mass?.Kilograms / area ?? MassPerSquareMetre) * Gravity / 1e6;
        return newtonsPerSquareMm / (ModulusMpa * Math.Pow(body.Thickness.Millimeters, 3) / 12);
    }
}
