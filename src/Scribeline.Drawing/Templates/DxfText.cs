using System.Globalization;
using System.Text;

namespace Scribeline.Drawing.Templates;

/// <summary>A template's lines as a drawing exchange file of release 12, in millimetres with y up, a layer for each role.</summary>
public static class DxfText
{
    /// <summary>The whole file.</summary>
    public static string Of(Template template)
    {
        var file = new StringBuilder();
        Put(0, "SECTION", 2, "HEADER", 9, "$ACADVER", 1, "AC1009", 9, "$MEASUREMENT", 70, "1");
        Put(9, "$EXTMIN", 10, Number(0), 20, Number(0), 9, "$EXTMAX", 10, Number(template.Width), 20, Number(template.Height), 0, "ENDSEC");
        var roles = template.Lines.Select(l => l.Role).Distinct().Order().ToList();
        Put(0, "SECTION", 2, "TABLES", 0, "TABLE", 2, "LTYPE", 70, "1", 0, "LTYPE", 2, "CONTINUOUS", 70, "0", 3, "Solid line", 72, "65", 73, "0", 40, "0.0", 0, "ENDTAB");
        Put(0, "TABLE", 2, "LAYER", 70, roles.Count.ToString(CultureInfo.InvariantCulture));
        foreach (var role in roles) Put(0, "LAYER", 2, Layer(role), 70, "0", 62, role == LineRole.Cut ? "7" : role == LineRole.Scribe ? "5" : "8", 6, "CONTINUOUS");
        Put(0, "ENDTAB", 0, "ENDSEC", 0, "SECTION", 2, "ENTITIES");
        foreach (var line in template.Lines) Entity(line);
        Put(0, "ENDSEC", 0, "EOF");
        return file.ToString();

        void Entity(TemplateLine line)
        {
            switch (line)
            {
                case RoundLine r:
                    Put(0, "CIRCLE", 8, Layer(r.Role), 10, Number(r.X), 20, Number(template.Height - r.Y), 30, "0.0", 40, Number(r.Radius));
                    break;
                case CornerLine { Closed: false, Corners: [var a, var b] }:
                    Put(0, "LINE", 8, Layer(line.Role), 10, Number(a.X), 20, Number(template.Height - a.Y), 30, "0.0", 11, Number(b.X), 21, Number(template.Height - b.Y), 31, "0.0");
                    break;
                case CornerLine c:
                    Put(0, "POLYLINE", 8, Layer(c.Role), 66, "1", 10, "0.0", 20, "0.0", 30, "0.0", 70, c.Closed ? "1" : "0");
                    foreach (var (x, y) in c.Corners) Put(0, "VERTEX", 8, Layer(c.Role), 10, Number(x), 20, Number(template.Height - y), 30, "0.0");
                    Put(0, "SEQEND", 8, Layer(c.Role));
                    break;
                default:
                    break;
            }
        }

        void Put(params object[] pairs)
        {
            for (var i = 0; i < pairs.Length; i += 2) file.Append(CultureInfo.InvariantCulture, $"{pairs[i],3}\n{pairs[i + 1]}\n");
        }
    }

    private static string Layer(LineRole role) => role.ToString().ToUpperInvariant();

    private static string Number(double value) => value.ToString("0.0#####", CultureInfo.InvariantCulture);
}
