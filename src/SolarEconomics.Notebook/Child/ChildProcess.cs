using System.ComponentModel;
using System.Diagnostics;
using System.IO.Pipes;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Threading.Channels;

namespace SolarEconomics.Notebook;

/// <summary>One process of a session, seen from the side that started it.</summary>
internal sealed class ChildProcess : IDisposable
{
    private static readonly TimeSpan LastWords = TimeSpan.FromMilliseconds(500);

    private static readonly string[] LastWordsBegin = ["Stack overflow", "Out of memory", "Unhandled exception", "Process terminated", "Fatal error"];

    private readonly Process process;
    private readonly MessagePipe pipe;
    private readonly NamedPipeServerStream stream;
    private readonly TaskCompletionSource ready = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly TaskCompletionSource<ChildEnd> ended = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly Channel<SessionCommand> commands =
        System.Threading.Channels.Channel.CreateUnbounded<SessionCommand>(new() { SingleReader = true });
    private readonly StringBuilder errors = new();
    private readonly TaskCompletionSource exited = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly TaskCompletionSource lastEventRead = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private EndReason? asked;
    private bool isDying;

    private ChildProcess(Process process, NamedPipeServerStream stream)
    {
        this.process = process;
        this.stream = stream;
        pipe = new MessagePipe(stream);
    }

    /// <summary>Hears the events of the process; a warm spare has nobody to tell.</summary>
    internal Action<SessionEvent>? Hear { get; set; }

    /// <summary>Hears stream and text of what is printed past the session, by a native library for example.</summary>
    internal Action<string, string>? HearPrint { get; set; }

    /// <summary>Completes when the engine is warm, or the process has ended.</summary>
    internal Task Ready => ready.Task;

    internal Task<ChildEnd> Ended => ended.Task;

    internal int Id => process.Id;

    /// <summary>Starts the program and waits in the background for it to call back.</summary>
    /// <exception cref="Win32Exception">The program cannot be started.</exception>
    internal static ChildProcess Start(ChildProgram program, long memoryLimitBytes)
    {
        // Short: on macOS the path of a pipe has room for 104 characters in all.
        var name = "solar-" + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8));
        var stream = new NamedPipeServerStream(name, PipeDirection.InOut, 1, PipeTransmissionMode.Byte, PipeOptions.Asynchronous | PipeOptions.CurrentUserOnly);
        var start = new ProcessStartInfo(program.FileName, [.. program.Arguments, name])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
            CreateNoWindow = true,
            UseShellExecute = false,
        };
        ChildEnvironment.Prepare(start, memoryLimitBytes);
        try
        {
            var child = new ChildProcess(Process.Start(start)!, stream);
            child.Begin();
            return child;
        }
        catch
        {
            stream.Dispose();
            throw;
        }
    }

    /// <summary>Sends a command once the process has called back; what an ended process never got is forgotten with it.</summary>
    internal void Send(SessionCommand command) => commands.Writer.TryWrite(command);

    /// <summary>Memory that the process holds; 0 once it has ended.</summary>
    internal long MeasureMemory()
    {
        try
        {
            process.Refresh();
            return process.HasExited ? 0 : process.WorkingSet64;
        }
        catch (InvalidOperationException)
        {
            return 0;
        }
    }

    /// <summary>Ends the process and everything it started.</summary>
    internal void End(EndReason reason)
    {
        asked ??= reason;
        try
        {
            process.Kill(entireProcessTree: true);
        }
        catch (Exception e) when (e is InvalidOperationException or Win32Exception or AggregateException)
        {
            // It has ended already, or ends just now; either way its end is reported by its exit.
            if (!process.HasExited && e is not InvalidOperationException) process.Kill();
        }
    }

    public void Dispose()
    {
        End(EndReason.Closed);
        pipe.Dispose();
    }

    private void Begin()
    {
        process.EnableRaisingEvents = true;
        process.Exited += (_, _) => exited.TrySetResult();
        process.StandardInput.Close();
        process.OutputDataReceived += (_, line) => Print("stdout", line.Data);
        process.ErrorDataReceived += (_, line) => Print("stderr", line.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        new Thread(Read) { IsBackground = true, Name = "session events" }.Start();
        _ = WaitForExit();
    }

    private void Print(string to, string? line)
    {
        if (line is null) return;
        if (string.Equals(to, "stderr", StringComparison.Ordinal))
        {
            lock (errors)
                if (errors.Length < 4000) errors.Append(line).Append('\n');
            // The runtime's last words list the engine's own frames; the end of the session is said in a sentence instead.
            isDying |= LastWordsBegin.Any(words => line.StartsWith(words, StringComparison.Ordinal));
        }
        if (!isDying) HearPrint?.Invoke(to, line + "\n");
    }

    private void Read()
    {
        try
        {
            if (Task.WaitAny(stream.WaitForConnectionAsync(), exited.Task) == 1) return;
            _ = WriteCommands();
            while (pipe.Receive<SessionEvent>() is { } happened)
            {
                if (happened is StateChanged { State: SessionState.Ready }) ready.TrySetResult();
                Hear?.Invoke(happened);
            }
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            // The process is gone in the middle of a message; its exit says so.
        }
        catch (Exception e) when (e is InvalidDataException or JsonException)
        {
            // Something else wrote into the pipe: nothing that follows can be trusted.
            End(EndReason.Killed);
        }
        finally
        {
            lastEventRead.TrySetResult();
        }
    }

    private async Task WriteCommands()
    {
        try
        {
            await foreach (var command in commands.Reader.ReadAllAsync()) pipe.Send(command);
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // The process is gone; its exit says so.
            commands.Writer.TryComplete();
        }
    }

    private async Task WaitForExit()
    {
        await exited.Task;
        // What was printed last may still be on its way. A process that the code left behind can keep the streams open, so the wait has an end.
        await Task.WhenAny(Task.WhenAll(process.WaitForExitAsync(), lastEventRead.Task), Task.Delay(LastWords));
        string text;
        lock (errors) text = errors.ToString();
        ended.TrySetResult(asked is { } reason ? ChildEnd.Asked(reason) : ChildEnd.Judge(process.ExitCode, text));
        ready.TrySetResult();
        commands.Writer.TryComplete();
    }
}
