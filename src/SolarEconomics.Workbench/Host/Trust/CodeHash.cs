using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>A fingerprint of all code in a notebook: what would run, and in which order. Words and answers do not run, so they do not count.</summary>
internal static class CodeHash
{
    public static string Of(NotebookDocument document)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> length = stackalloc byte[4];
        foreach (var step in document.Steps.Where(step => step.Kind == StepKind.Code))
        {
            var code = Encoding.UTF8.GetBytes(step.Source);
            // The length first: otherwise code could be moved from one step into the next without being noticed.
            BinaryPrimitives.WriteInt32LittleEndian(length, code.Length);
            hash.AppendData(length);
            hash.AppendData(code);
        }
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
