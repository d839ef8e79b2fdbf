// Reads the instances, each in the format of its folder.
#include "tests/reel/instances.h"

#include <fstream>
#include <map>
#include <sstream>

namespace libsplice::testing {

namespace {

constexpr Nanometres per_unit = 1'000'000; // a unit of the files is a millimetre

using Rows = std::vector<std::vector<std::string>>;

/// The rows of a tab-separated file after its heading.
Rows read_rows(const std::string& path) {
    Rows rows;
    std::ifstream file(path);
    std::string line;
    std::getline(file, line);
    while (std::getline(file, line)) {
        std::istringstream cells(line);
        std::vector<std::string> row;
        for (std::string cell; std::getline(cells, cell, '\t');) {
            row.push_back(cell);
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

StockProblem bins(Amount capacity, const std::vector<Amount>& sizes) {
    StockProblem problem;
    problem.stocks.push_back({.length = capacity * per_unit, .each = {1}, .usable = 1});
    std::map<Amount, std::int64_t, std::greater<>> counts;
    for (const Amount size : sizes) {
        ++counts[size];
    }
    for (const auto& [size, count] : counts) {
        problem.items.push_back({size * per_unit, count});
    }
    return problem;
}

std::vector<Amount> read_numbers(std::istream& file, std::size_t count) {
    std::vector<Amount> numbers(count);
    for (Amount& number : numbers) {
        file >> number;
    }
    return numbers;
}

void read_uniform(const std::string& path, std::map<std::string, StockProblem>& problems) {
    std::ifstream file(path);
    std::size_t count = 0;
    file >> count;
    for (std::size_t i = 0; i < count; ++i) {
        std::string name;
        Amount capacity = 0;
        std::size_t items = 0;
        Amount stated = 0;
        file >> name >> capacity >> items >> stated;
        problems[name] = bins(capacity, read_numbers(file, items));
    }
}

} // namespace

std::vector<Instance> or_library(const std::string& folder) {
    std::map<std::string, StockProblem> problems;
    for (const char* file : {"1", "2", "3", "4"}) {
        read_uniform(folder + "/binpack" + file + ".txt", problems);
    }
    std::vector<Instance> instances;
    for (const auto& row : read_rows(folder + "/optimum.tsv")) {
        if (!problems.contains(row[0])) {
            std::ifstream file(folder + "/" + row[1]);
            std::size_t items = 0;
            Amount capacity = 0;
            file >> items >> capacity;
            problems[row[0]] = bins(capacity, read_numbers(file, items));
        }
        instances.push_back({row[0], problems.at(row[0]), std::stoll(row[4])});
    }
    return instances;
}

std::vector<Instance> planted(const std::string& folder) {
    std::vector<Instance> instances;
    for (const auto& row : read_rows(folder + "/optimum.tsv")) {
        Instance instance{row[0], {}, std::nullopt};
        if (row[2] != "none") {
            instance.optimum = std::stoll(row[2]);
        }
        instance.problem.cut_loss = std::stoll(row[1]) * per_unit;
        std::ifstream file(folder + "/" + row[0] + ".txt");
        std::size_t count = 0;
        file >> count;
        for (std::size_t i = 0; i < count; ++i) {
            const auto numbers = read_numbers(file, 3);
            const std::int64_t available = numbers[1] == 999'999 ? no_limit : numbers[1];
            instance.problem.stocks.push_back({.length = numbers[0] * per_unit,
                                               .available = available,
                                               .each = {numbers[2]},
                                               .usable = 1});
        }
        file >> count;
        for (std::size_t i = 0; i < count; ++i) {
            const auto numbers = read_numbers(file, 2);
            instance.problem.items.push_back({numbers[0] * per_unit, numbers[1]});
        }
        instances.push_back(std::move(instance));
    }
    return instances;
}

} // namespace libsplice::testing
