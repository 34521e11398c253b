using Scribeline.App.Terminal;
using Scribeline.Store;

namespace Scribeline.App.Commands;

/// <summary>Writes what a command makes.</summary>
internal static class OutputFile
{
    /// <summary>Writes a file whole, or says why not.</summary>
    /// <returns>Whether it is written.</returns>
    public static bool Write(Screen screen, string path, byte[] content)
    {
        try
        {
            SafeWriting.Write(path, content);
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            screen.Error.WriteLine($"{path} cannot be written: {failure.Message.TrimEnd('.')}. Name a file in a folder that is there and may be written.");
            return false;
        }
    }

    /// <summary>Makes a folder, or says why not.</summary>
    /// <returns>Whether it is there.</returns>
    public static bool Folder(Screen screen, string path)
    {
        try
        {
            Directory.CreateDirectory(path);
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            screen.Error.WriteLine($"{path} cannot be made: {failure.Message.TrimEnd('.')}. Name a folder that may be written.");
            return false;
        }
    }
}
