// Projects the rope, finds its crossings, and works out the determinant of their colouring
// matrix in whole numbers.
#include "libsplice/mechanics/knots/knot_determinant.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace libsplice {

namespace {

/// Crossings nearer to a segment's end than this share of it, or strands nearer in depth than this,
/// are not told apart: another direction is looked along.
constexpr double telling_share = 1e-9;
constexpr std::size_t most_crossings = 400;

/// One passage of the curve through a crossing.
struct Passage {
    double along = 0.0; ///< segments up to here
    std::size_t crossing = 0;
    bool over = false;
};

/// The curve seen along a direction: x and y in the picture, z towards the eye.
std::vector<Point> seen_along(const std::vector<Point>& points, Point direction) {
    const Point aside = std::abs(direction.x) < 0.7 ? Point{1.0, 0.0, 0.0} : Point{0.0, 1.0, 0.0};
    const Point right = direction_of(cross(aside, direction));
    const Point up = cross(direction, right);
    std::vector<Point> seen;
    seen.reserve(points.size());
    for (const Point& point : points) {
        seen.push_back({dot(point, right), dot(point, up), dot(point, direction)});
    }
    return seen;
}

/// The curve as one round. An open one goes on far beyond its ends, and from there is closed by two
/// segments, in the picture far to one side.
std::vector<Point> closed_up(const Curve& curve, Point towards_eye) {
    std::vector<Point> points = curve.points;
    if (!curve.closed) {
        double size = 0.0;
        for (const Point& point : points) {
            size = std::max(size, norm(point - points.front()));
        }
        const Point far = (10.0 * size) * direction_of(points.back() - points.front());
        points.insert(points.begin(), points.front() - far);
        points.push_back(points.back() + far);
        points.push_back(0.5 * (points.front() + points.back()) + cross(far, towards_eye));
    }
    return points;
}

double turned(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}

class Diagram {
  public:
    /// `closed_over`: the last two segments, back to the first point, lie over all others.
    Diagram(std::vector<Point> seen, bool closed_over)
        : seen_(std::move(seen)), closed_over_(closed_over) {}

    /// False where the picture does not tell which strand lies over which.
    bool find_crossings() {
        const std::size_t count = seen_.size();
        for (std::size_t i = 0; i < count; ++i) {
            for (std::size_t j = i + 1; j < count; ++j) {
                const bool neighbours = j == i + 1 || (i == 0 && j + 1 == count);
                if (!neighbours && !find_crossing(i, j)) {
                    return false;
                }
            }
        }
        std::ranges::sort(passages_, {}, &Passage::along);
        return true;
    }

    [[nodiscard]] const std::vector<Passage>& passages() const { return passages_; }

  private:
    bool find_crossing(std::size_t i, std::size_t j) {
        const Point& a = seen_[i];
        const Point& c = seen_[j];
        const Point ab = seen_[(i + 1) % seen_.size()] - a;
        const Point cd = seen_[(j + 1) % seen_.size()] - c;
        const Point ac = c - a;
        const double area = turned(ab, cd);
        if (std::abs(area) <= telling_share * seen_length(ab) * seen_length(cd)) {
            return lie_apart(ab, ac, ac + cd);
        }
        const double s = turned(ac, cd) / area;
        const double t = turned(ac, ab) / area;
        const auto clear_of = [](double share) {
            return share < -telling_share || share > 1 + telling_share;
        };
        const auto inside = [](double share) {
            return share > telling_share && share < 1 - telling_share;
        };
        if (clear_of(s) || clear_of(t)) {
            return true;
        }
        const bool under_all = closed_over_ && j + 2 >= seen_.size();
        const double higher = under_all ? -1.0 : (a.z + s * ab.z) - (c.z + t * cd.z);
        if (!inside(s) || !inside(t) || std::abs(higher) < telling_share) {
            return false;
        }
        const std::size_t crossing = passages_.size() / 2;
        passages_.push_back({static_cast<double>(i) + s, crossing, higher > 0.0});
        passages_.push_back({static_cast<double>(j) + t, crossing, higher < 0.0});
        return true;
    }

    static double seen_length(Point step) { return std::sqrt(step.x * step.x + step.y * step.y); }

    /// Two parallel segments, the second's ends seen from the first's beginning: side by side, or
    /// one beyond the other.
    static bool lie_apart(Point step, Point begin, Point end) {
        const double length = seen_length(step);
        if (!(length > 0.0)) { // seen end on
            return false;
        }
        const auto along = [&](Point to) {
            return (step.x * to.x + step.y * to.y) / length;
        };
        return std::abs(turned(step, begin)) > telling_share * length ||
               std::max(along(begin), along(end)) < 0.0 ||
               std::min(along(begin), along(end)) > length;
    }

    std::vector<Point> seen_;
    bool closed_over_;
    std::vector<Passage> passages_;
};

using Matrix = std::vector<std::vector<std::int64_t>>;

/// A row for each crossing, a column for each stretch from one passage under to the next: twice the
/// stretch that lies over, less the two that end below it. One row and one column are left out.
Matrix crossing_matrix(const std::vector<Passage>& passages) {
    const std::size_t count = passages.size() / 2;
    struct Stretches {
        std::size_t over = 0;
        std::size_t under = 0; ///< the one that ends here
    };
    std::vector<Stretches> at(count);
    std::size_t stretch = 0;
    for (const Passage& passage : passages) {
        if (passage.over) {
            at[passage.crossing].over = stretch;
        } else {
            at[passage.crossing].under = stretch;
            stretch = (stretch + 1) % count;
        }
    }
    Matrix full(count, std::vector<std::int64_t>(count, 0));
    for (std::size_t row = 0; row < count; ++row) {
        full[row][at[row].over] += 2;
        full[row][at[row].under] -= 1;
        full[row][(at[row].under + 1) % count] -= 1;
    }
    full.pop_back();
    for (auto& row : full) {
        row.pop_back();
    }
    return full;
}

std::int64_t power(std::int64_t base, std::int64_t exponent, std::int64_t prime) {
    std::int64_t result = 1;
    for (; exponent > 0; exponent /= 2) {
        result = exponent % 2 != 0 ? result * base % prime : result;
        base = base * base % prime;
    }
    return result;
}

std::int64_t determinant_modulo(Matrix matrix, std::int64_t prime) {
    const std::size_t count = matrix.size();
    std::int64_t determinant = 1;
    for (std::size_t column = 0; column < count; ++column) {
        std::size_t pivot = column;
        while (pivot < count && matrix[pivot][column] % prime == 0) {
            ++pivot;
        }
        if (pivot == count) {
            return 0;
        }
        if (pivot != column) {
            std::swap(matrix[pivot], matrix[column]);
            determinant = -determinant;
        }
        const auto& top = matrix[column];
        determinant = determinant * (top[column] % prime) % prime;
        const std::int64_t inverse = power((top[column] % prime + prime) % prime, prime - 2, prime);
        for (std::size_t row = column + 1; row < count; ++row) {
            const std::int64_t factor = matrix[row][column] % prime * inverse % prime;
            if (factor == 0) {
                continue;
            }
            for (std::size_t k = column; k < count; ++k) {
                matrix[row][k] = (matrix[row][k] - factor * top[k]) % prime;
            }
        }
    }
    return determinant;
}

bool is_prime(std::int64_t number) {
    for (std::int64_t divisor = 3; divisor * divisor <= number; divisor += 2) {
        if (number % divisor == 0) {
            return false;
        }
    }
    return number % 2 != 0;
}

/// The determinant from its remainders. By Hadamard's bound it is at most 6^(n/2), every row being
/// no longer than the root of 6; once the primes' product is over twice that, a number that leaves
/// the right remainder for each of them is the determinant itself.
std::optional<std::int64_t> determinant_of(const Matrix& matrix) {
    constexpr std::int64_t largest_prime = 2'147'483'647; // 2^31 - 1
    constexpr std::int64_t largest = 1'000'000'000;
    const double bits = 0.5 * std::log2(6.0) * static_cast<double>(matrix.size()) + 1.0;
    std::optional<std::int64_t> known;
    std::int64_t prime = largest_prime;
    for (double reached = 0.0; reached <= bits; reached += 30.0) {
        while (!is_prime(prime)) {
            prime -= 2;
        }
        std::int64_t rest = determinant_modulo(matrix, prime);
        rest = rest > prime / 2 ? rest - prime : rest < -(prime / 2) ? rest + prime : rest;
        if (!known) {
            known = rest;
        }
        if ((*known - rest) % prime != 0 || std::abs(*known) > largest) {
            return std::nullopt;
        }
        prime -= 2;
    }
    return std::abs(*known);
}

/// Directions spread over a sphere by the golden angle, none of them along an axis.
Point direction(std::size_t number, std::size_t of) {
    const double height = (2.0 * static_cast<double>(number) + 1.0) / static_cast<double>(of) - 1.0;
    const double round = std::numbers::pi * (3.0 - std::sqrt(5.0)) * static_cast<double>(number);
    const double wide = std::sqrt(1.0 - height * height);
    return {wide * std::cos(round), wide * std::sin(round), height};
}

/// Along the line of its ends an open curve would be closed through itself.
bool looks_along_ends(const Curve& curve, Point direction) {
    return !curve.closed &&
           std::abs(dot(direction_of(curve.points.back() - curve.points.front()), direction)) > 0.7;
}

} // namespace

std::optional<std::int64_t> knot_determinant(const Curve& curve) {
    constexpr std::size_t directions = 12;
    std::optional<std::vector<Passage>> fewest;
    for (std::size_t i = 0; i < directions; ++i) {
        const Point towards_eye = direction(i, directions);
        if (looks_along_ends(curve, towards_eye)) {
            continue;
        }
        Diagram diagram(seen_along(closed_up(curve, towards_eye), towards_eye), !curve.closed);
        if (diagram.find_crossings() && (!fewest || diagram.passages().size() < fewest->size())) {
            fewest = diagram.passages();
        }
    }
    if (!fewest || fewest->size() / 2 > most_crossings) {
        return std::nullopt;
    }
    if (fewest->empty()) {
        return 1;
    }
    return determinant_of(crossing_matrix(*fewest));
}

} // namespace libsplice
