using System.Text;

namespace Scribeline.Engine.Quantities;

/// <summary>Turns names of the program into words a builder types.</summary>
public static class PlainWords
{
    /// <summary><c>DragCoefficient</c> as <c>drag coefficient</c>.</summary>
    public static string Of(string name)
    {
        StringBuilder words = new();
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && words.Length > 0) words.Append(' ');
            words.Append(char.ToLowerInvariant(letter));
        }

        return words.ToString();
    }
}
