using System.Security.Cryptography;
using System.Text;
using Scribeline.Store.Logbooks;

namespace Scribeline.Store;

/// <summary>
/// Tells what a confirmation was given for: SHA-256 over the text of the design as it stands, the files it names, and what the logbook adds to it.
/// Any other design, motor, site or measured value has another basis.
/// </summary>
/// <param name="Ahead">For what does not hang on the weather: its file is left out, where it has one of its own.</param>
/// <param name="OnTheDay">For everything else.</param>
public sealed record FlightBasis(string Ahead, string OnTheDay)
{
    /// <summary>The basis of a design; null where a file it names cannot be read any more.</summary>
    /// <param name="reading">The design as it stands, saved or not.</param>
    /// <param name="measured">Values of the logbook that count in its answers.</param>
    public static FlightBasis? Of(DesignReading reading, IEnumerable<MeasuredValue> measured)
    {
        try
        {
            var weather = reading.Path is { } path && reading.Design?.Weather?.File is { } file ? Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, file)) : null;
            using var ahead = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
            using var day = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
            Add(Encoding.UTF8.GetBytes(reading.Text), ahead, day);
            foreach (var other in reading.Named)
            {
                // As it stands, saved or not, like the design itself.
                if (other.Text is null) return null;
                var content = Encoding.UTF8.GetBytes(other.Text);
                Add(content, day);
                if (other.Path != weather) Add(content, ahead);
            }

            foreach (var value in measured) Add(Encoding.UTF8.GetBytes($"{value.What} = {value.Value}"), ahead, day);
            return new(Convert.ToHexStringLower(ahead.GetCurrentHash()), Convert.ToHexStringLower(day.GetCurrentHash()));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    // The length goes first, so that a byte cannot move from one file to the next unseen.
    private static void Add(byte[] content, params ReadOnlySpan<IncrementalHash> hashes)
    {
        foreach (var hash in hashes)
        {
            hash.AppendData(BitConverter.GetBytes((long)content.Length));
            hash.AppendData(content);
        }
    }

    /// <summary>The basis a condition is confirmed for.</summary>
    /// <param name="ahead">Whether it holds whatever the weather turns to.</param>
    public string For(bool ahead) => ahead ? Ahead : OnTheDay;
}
