using CanvasCut.Drawing;
using CanvasCut.Export.Common;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Dxf;

/// <summary>Writes what stands before the entities: header and tables.</summary>
internal sealed class DxfTables(DxfPairs pairs, bool isInInches)
{
    /// <summary>White or black, whichever shows on the reader's background.</summary>
    private const int PlainColour = 7;

    private const string TextStyle = "STANDARD";

    /// <summary>Values of $INSUNITS.</summary>
    private const int Inches = 1;
    private const int Millimetres = 4;

    public void WriteHeader(Box extent)
    {
        pairs.Text(0, "SECTION").Text(2, "HEADER");
        pairs.Text(9, "$ACADVER").Text(1, "AC1009");

        // Formally newer than release 12, but without it readers take the numbers for metres or inches.
        pairs.Text(9, "$INSUNITS").Whole(70, isInInches ? Inches : Millimetres);
        pairs.Text(9, "$MEASUREMENT").Whole(70, isInInches ? 0 : 1);
        pairs.Text(9, "$EXTMIN").Place(10, extent.LowerLeft);
        pairs.Text(9, "$EXTMAX").Place(10, new(extent.Right, extent.Top));
        pairs.Text(0, "ENDSEC");
    }

    public void WriteTables()
    {
        pairs.Text(0, "SECTION").Text(2, "TABLES");
        WriteLineTypes();
        WriteLayers();
        WriteStyle();
        pairs.Text(0, "ENDSEC");
    }

    private void WriteLineTypes()
    {
        Begin("LTYPE", 1 + DxfLayers.DashedRoles.Count());
        WriteLineType(DxfLayers.Continuous, []);
        foreach (var role in DxfLayers.DashedRoles)
        {
            WriteLineType(DxfLayers.LineTypeOf(role), LineStyle.Of(role).DashesMm);
        }

        pairs.Text(0, "ENDTAB");
    }

    private void WriteLineType(string name, IReadOnlyList<double> dashesMm)
    {
        pairs.Text(0, "LTYPE").Text(2, name).Whole(70, 0).Text(3, name).Whole(72, 65);
        pairs.Whole(73, dashesMm.Count).Length(40, dashesMm.Sum());
        for (var i = 0; i < dashesMm.Count; i++)
        {
            pairs.Length(49, i % 2 == 0 ? dashesMm[i] : -dashesMm[i]);
        }
    }

    private void WriteLayers()
    {
        Begin("LAYER", 1 + DxfLayers.Roles.Count);
        WriteLayer("0", DxfLayers.Continuous);
        foreach (var role in DxfLayers.Roles)
        {
            WriteLayer(DxfLayers.Of(role), DxfLayers.LineTypeOf(role));
        }

        pairs.Text(0, "ENDTAB");
    }

    private void WriteLayer(string name, string lineType) =>
        pairs.Text(0, "LAYER").Text(2, name).Whole(70, 0).Whole(62, PlainColour).Text(6, lineType);

    private void WriteStyle()
    {
        Begin("STYLE", 1);
        pairs.Text(0, "STYLE").Text(2, TextStyle).Whole(70, 0).Number(40, 0).Number(41, 1).Number(50, 0);
        pairs.Whole(71, 0).Length(42, 2.5).Text(3, "txt").Text(4, string.Empty);
        pairs.Text(0, "ENDTAB");
    }

    private void Begin(string table, int records) => pairs.Text(0, "TABLE").Text(2, table).Whole(70, records);
}
