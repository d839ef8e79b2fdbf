# Completion of splice for bash. The program itself answers what may stand where the cursor is, so
# that ropes and kinds of --tables and --plug-in are among it and nothing is listed here.
_splice() {
    local cur words cword word line before='' paths=''
    local given=() replies=()
    _get_comp_words_by_ref -n "=:" cur words cword || return
    for word in "${words[@]:1:cword}"; do
        word=${word//[\"\'\\]/}
        [[ $word != "~/"* ]] || word=$HOME/${word#"~/"}
        given+=("$word")
    done
    while IFS= read -r line; do
        case $line in
            $'\t'*) paths=${line#$'\t'} ;;
            *) replies+=("${line%%$'\t'*}") ;;
        esac
    done < <("${words[0]}" complete "${given[@]}" 2>/dev/null)

    # bash separates words at = and :, and only what follows the last of them is put in.
    [[ $cur != *[=:]* ]] || before=${cur%"${cur##*[=:]}"}
    COMPREPLY=("${replies[@]#"$before"}")
    # A name with a blank is quoted, unless a quote is open already.
    if [[ $cur != [\"\']* ]]; then
        for line in "${!COMPREPLY[@]}"; do
            [[ ${COMPREPLY[line]} != *' '* ]] || printf -v "COMPREPLY[$line]" '%q' "${COMPREPLY[line]}"
        done
    fi
    [[ ${#COMPREPLY[@]} -ne 1 || ${COMPREPLY[0]} != *= ]] || compopt -o nospace
    cur=${cur#"$before"}
    [[ $paths != files ]] || _filedir
    [[ $paths != folders ]] || _filedir -d
}
complete -F _splice splice
