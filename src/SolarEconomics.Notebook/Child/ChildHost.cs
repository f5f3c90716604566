using System.IO.Pipes;
using System.Runtime.ExceptionServices;

namespace SolarEconomics.Notebook;

/// <summary>The other end of a <see cref="ChildSession"/>: what the program does when it is started as a session's own process.</summary>
public static class ChildHost
{
    /// <summary>An output longer than this is replaced by a sentence that says so: the page would freeze on it.</summary>
    private const int LongestOutput = 100 * 1024 * 1024;

    /// <summary>Serves one session until the other side closes.</summary>
    /// <param name="pipeName">Name of the pipe that the starting process listens on.</param>
    /// <returns>Exit code of the process.</returns>
    public static int Serve(string pipeName)
    {
        ArgumentNullException.ThrowIfNull(pipeName);
        using var stream = new NamedPipeClientStream(".", pipeName, PipeDirection.InOut, PipeOptions.Asynchronous | PipeOptions.CurrentUserOnly);
        stream.Connect(TimeSpan.FromSeconds(30));
        using var pipe = new MessagePipe(stream);
        // A failing background thread of the code is said where the step prints; the session goes on.
        ExceptionHandling.SetUnhandledExceptionHandler(e =>
        {
            Console.Error.WriteLine($"A thread that a step started failed. {e.GetType().Name}: {e.Message}");
            return true;
        });
        var session = EngineSession.Start(new SessionOptions());
        session.Listen(happened => Send(pipe, happened));
        // A thread of its own: a stop is heard even when the code has taken every thread of the pool.
        while (pipe.Receive<SessionCommand>() is { } command) Obey(command, session, pipe);
        return 0;
    }

    private static void Obey(SessionCommand command, EngineSession session, MessagePipe pipe)
    {
        switch (command)
        {
            case OpenSession open:
                session.Adopt(open.Folder, open.Culture);
                break;
            case RunStep step:
                _ = session.RunAsync(step);
                break;
            case StopStep:
                _ = session.StopAsync();
                break;
            case AnswerInput answer:
                session.AnswerInput(answer.InputId, answer.Text);
                break;
            case ReadTable asked:
                _ = Read(asked, session, pipe);
                break;
            case CompleteCode asked:
                _ = Complete(asked, session, pipe);
                break;
        }
    }

    private static async Task Complete(CompleteCode asked, EngineSession session, MessagePipe pipe) =>
        Send(pipe, new CompletionsFound(asked.RequestId, await session.CompleteAsync(asked.Code, asked.Position)));

    private static async Task Read(ReadTable asked, EngineSession session, MessagePipe pipe)
    {
        TablePage? page;
        try { page = await session.ReadTableAsync(asked.Query); }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            // The values' own code failed while they were compared or said; the reader is told in the table's place.
            page = new TablePage(["The table could not be read"], [[e.Message]], 1, 1);
        }
        Send(pipe, new TableRead(asked.RequestId, page));
    }

    private static void Send(MessagePipe pipe, SessionEvent happened)
    {
        try
        {
            var message = MessagePipe.Encode(happened);
            if (message.Length > LongestOutput && happened is OutputAdded output)
                message = MessagePipe.Encode<SessionEvent>(output with { Output = Outputs.TooLong(message.Length) });
            pipe.SendBytes(message);
        }
        catch (IOException)
        {
            // Nobody is left to work for.
            Environment.Exit(0);
        }
    }
}
