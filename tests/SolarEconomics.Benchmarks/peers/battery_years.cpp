// Many batteries over 25 years of hours, scenarios side by side so that the compiler's vectors hold them. Arguments: FOLDER, number of cases.
// Build: g++ -O3 -march=native -ffast-math, without which the minima and maxima stay scalar. Each line on standard input is one run.
#include <algorithm>
#include <chrono>
#include <cmath>
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

constexpr int Lanes = 16;
constexpr int Years = 25;

int main(int, char** arguments)
{
    const std::string folder = arguments[1];
    const size_t cases = std::stoul(arguments[2]);
    const auto sun = read(folder + "/sun.f64"), use = read(folder + "/use.f64"), buy = read(folder + "/buy.f64"), sell = read(folder + "/sell.f64");
    const auto usable0 = read(folder + "/usable.f64"), power = read(folder + "/power.f64");
    std::vector<double> npv(cases), imported(cases);
    std::cout << "ready" << std::endl;
    for (std::string line; std::getline(std::cin, line);)
    {
        const auto start = std::chrono::steady_clock::now();
        for (size_t from = 0; from < cases; from += Lanes)
        {
            double stored[Lanes] = {}, drawn[Lanes] = {}, value[Lanes] = {}, bought[Lanes] = {};
            for (int year = 0; year < Years; year++)
            {
                double usable[Lanes], limit[Lanes], cost[Lanes] = {};
                for (int k = 0; k < Lanes; k++)
                {
                    usable[k] = usable0[from + k] * std::max(0.0, 1 - 0.01 * year - 0.00004 * (drawn[k] / usable0[from + k]));
                    stored[k] = std::min(stored[k], usable[k]);
                    limit[k] = power[from + k];
                }
                const double sunScale = std::pow(0.995, year), into = 0.95, outOf = 0.95, perInto = 1 / into, perOut = 1 / outOf;
                for (size_t i = 0; i < sun.size(); i++)
                {
                    const double net = sun[i] * sunScale - use[i], spread = buy[i] - sell[i], paid = sell[i];
                    for (int k = 0; k < Lanes; k++)
                    {
                        const double want = std::min(std::max(net, -limit[k]), limit[k]);
                        const double up = std::max(want, 0.0);
                        const double after = std::min(std::max(stored[k] + (up * into + (want - up) * perOut), 0.0), usable[k]);
                        const double change = after - stored[k];
                        const double gain = std::max(change, 0.0);
                        const double grid = net - gain * perInto - (change - gain) * outOf;
                        const double below = std::min(grid, 0.0);
                        cost[k] -= below * spread + grid * paid;
                        bought[k] -= below;
                        drawn[k] -= change - gain;
                        stored[k] = after;
                    }
                }
                for (int k = 0; k < Lanes; k++) value[k] -= cost[k] * std::pow(1.03, year) / std::pow(1.05, year + 1);
            }
            for (int k = 0; k < Lanes; k++) npv[from + k] = value[k], imported[from + k] = bought[k];
        }
        const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        double values = 0, sums = 0;
        for (size_t k = 0; k < cases; k++) values += npv[k], sums += imported[k];
        std::printf("{\"seconds\": %.17g, \"checksum\": [%.17g, %.17g]}\n", seconds, values, sums);
        std::fflush(stdout);
    }
}
