// One battery behind one home for a year: the branch-free loop, one scenario. Arguments: FOLDER with sun.f64 and use.f64. Build: g++ -O3.
// Each line on standard input is one run; the answer holds its seconds and, worked out after the clock stopped, its checksum.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <string>
#include <vector>

static std::vector<double> read(const std::string& path)
{
    std::ifstream file(path, std::ios::binary | std::ios::ate);
    std::vector<double> values(static_cast<size_t>(file.tellg()) / sizeof(double));
    file.seekg(0);
    file.read(reinterpret_cast<char*>(values.data()), static_cast<std::streamsize>(values.size() * sizeof(double)));
    return values;
}

static double sum(const std::vector<double>& values)
{
    double total = 0;
    for (double value : values) total += value;
    return total;
}

static void run(const double* sun, const double* use, size_t count, double* imported, double* exported, double* inside)
{
    const double usable = 10, charge = 4, discharge = -4, into = 0.95, outOf = 0.95, perInto = 1 / into, perOut = 1 / outOf;
    double stored = 0;
    for (size_t i = 0; i < count; i++)
    {
        const double net = sun[i] - use[i];
        const double want = std::min(std::max(net, discharge), charge);
        const double up = std::max(want, 0.0);
        const double after = std::min(std::max(stored + (up * into + (want - up) * perOut), 0.0), usable);
        const double change = after - stored;
        const double gain = std::max(change, 0.0);
        const double grid = net - gain * perInto - (change - gain) * outOf;
        const double out = std::max(grid, 0.0);
        exported[i] = out;
        imported[i] = out - grid;
        inside[i] = stored = after;
    }
}

int main(int, char** arguments)
{
    const std::string folder = arguments[1];
    const auto sun = read(folder + "/sun.f64"), use = read(folder + "/use.f64");
    std::vector<double> imported(sun.size()), exported(sun.size()), inside(sun.size());
    std::cout << "ready" << std::endl;
    for (std::string line; std::getline(std::cin, line);)
    {
        const auto start = std::chrono::steady_clock::now();
        for (int repeat = 0; repeat < 20; repeat++) run(sun.data(), use.data(), sun.size(), imported.data(), exported.data(), inside.data());
        const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        std::printf("{\"seconds\": %.17g, \"checksum\": [%.17g, %.17g, %.17g]}\n", seconds, sum(imported), sum(exported), sum(inside));
        std::fflush(stdout);
    }
}
